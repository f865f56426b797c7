import * as vscode from 'vscode';
import type { LanguageClient } from 'vscode-languageclient/node.js';
import { type Api, activateWith } from '../common/activate.js';
import { createClient } from './create-client.js';
import { provideTasks } from './tasks.js';

let client: LanguageClient | undefined;

/** On a desktop and on a remote machine: the server is a process, and there is a command line to run. */
export function activate(context: vscode.ExtensionContext): Api {
  client = createClient(context);
  const api = activateWith(context, client, (folder) => folder.scheme === 'file');
  // A workspace that is not trusted may say what a task runs, so it gets none.
  const offerTasks = (): void => {
    context.subscriptions.push(provideTasks(context.extensionUri));
  };
  if (vscode.workspace.isTrusted) offerTasks();
  else context.subscriptions.push(vscode.workspace.onDidGrantWorkspaceTrust(offerTasks));
  return api;
}

export function deactivate(): Promise<void> | undefined {
  return client?.stop();
}
