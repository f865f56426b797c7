import * as vscode from 'vscode';
import { LanguageClient, type ServerOptions, TransportKind } from 'vscode-languageclient/node.js';
import { clientOptions } from '../common/client-options.js';

/** The language server is one file beside the extension; it runs in a process of its own on the editor's Node. */
export function createClient(context: vscode.ExtensionContext): LanguageClient {
  const module = vscode.Uri.joinPath(context.extensionUri, 'dist', 'server.cjs').fsPath;
  const server: ServerOptions = { module, transport: TransportKind.ipc };
  return new LanguageClient('boothwright', 'Boothwright', server, clientOptions());
}
