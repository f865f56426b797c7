import * as vscode from 'vscode';
import {
  LanguageClient,
  type LanguageClientOptions,
  type ServerOptions,
  TransportKind,
} from 'vscode-languageclient/node.js';
import { catalogueScheme } from './catalogue.js';

/** The language server is one file beside the extension; it runs in a process of its own on the editor's Node. */
export function createClient(context: vscode.ExtensionContext): LanguageClient {
  const module = vscode.Uri.joinPath(context.extensionUri, 'dist', 'server.cjs').fsPath;
  const server: ServerOptions = { module, transport: TransportKind.ipc };
  const options: LanguageClientOptions = {
    documentSelector: [
      { scheme: 'file', language: 'booth' },
      { scheme: 'untitled', language: 'booth' },
      { scheme: catalogueScheme, language: 'booth' },
    ],
    synchronize: {
      configurationSection: 'boothwright',
      fileEvents: vscode.workspace.createFileSystemWatcher('**/*.booth'),
    },
    initializationOptions: {
      // This editor can open the catalogue as a document, so names may lead there.
      catalogueDocument: true,
      pictures: true,
      boothwright: vscode.workspace.getConfiguration('boothwright'),
    },
  };
  return new LanguageClient('boothwright', 'Boothwright', server, options);
}
