import * as vscode from 'vscode';
import { LanguageClient, type ServerOptions, TransportKind } from 'vscode-languageclient/node.js';
import { clientOptions } from '../common/client-options.js';

/** The language server lies beside the extension, as does what its thread runs; it runs in a process of its own on the editor's Node. */
export function createClient(context: vscode.ExtensionContext): LanguageClient {
  const module = vscode.Uri.joinPath(context.extensionUri, 'dist', 'server.cjs').fsPath;
  const server: ServerOptions = { module, transport: TransportKind.ipc };
  return new LanguageClient('boothwright', 'Boothwright', server, clientOptions());
}
