import * as vscode from 'vscode';
import { LanguageClient } from 'vscode-languageclient/browser.js';
import { type Api, activateWith } from '../common/activate.js';
import { clientOptions } from '../common/client-options.js';

declare const Worker: new (address: string) => ConstructorParameters<typeof LanguageClient>[3];

let client: LanguageClient | undefined;

/** In a browser: the server is a web worker, which reads nothing itself and runs no command line. */
export function activate(context: vscode.ExtensionContext): Api {
  const script = vscode.Uri.joinPath(context.extensionUri, 'dist', 'server.worker.js');
  client = new LanguageClient('boothwright', 'Boothwright', clientOptions(), new Worker(script.toString(true)));
  return activateWith(context, client, () => false);
}

export function deactivate(): Promise<void> | undefined {
  return client?.stop();
}
