import * as vscode from 'vscode';
import { LanguageClient } from 'vscode-languageclient/browser.js';
import { type Api, activateWith } from '../common/activate.js';
import { clientOptions } from '../common/client-options.js';
import { startWorker } from './start-worker.js';

let client: LanguageClient | undefined;

/** In a browser: the server is a web worker, which reads nothing itself and runs no command line. */
export async function activate(context: vscode.ExtensionContext): Promise<Api> {
  const script = vscode.Uri.joinPath(context.extensionUri, 'dist', 'server.worker.js');
  const worker = (await startWorker(script)) as ConstructorParameters<typeof LanguageClient>[3];
  client = new LanguageClient('boothwright', 'Boothwright', clientOptions(), worker);
  return activateWith(context, client, () => false);
}

export function deactivate(): Promise<void> | undefined {
  return client?.stop();
}
