import * as vscode from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import { catalogueScheme, provideCatalogue, showCatalogue } from './catalogue.js';
import { newSpec } from './new-spec.js';
import { openExample } from './open-example.js';
import { explainProblem, pageScheme, providePages } from './pages.js';
import { sendFiles } from './send-files.js';
import { liveSheet } from './sheet/live-sheet.js';
import { statusBar } from './status-bar.js';

/** What other extensions and the tests in the editor may hold on to. */
export interface Api {
  /** Settles when the language server answers. */
  readonly ready: Promise<void>;
  /** What the status bar says; undefined while it says nothing. */
  statusText(): string | undefined;
}

/** Everything that is the same on a desktop, on a remote machine and in a browser. */
export function activateWith(
  context: vscode.ExtensionContext,
  client: BaseLanguageClient,
  /** True for a server that reads the folder itself. */
  readsFolder: (folder: vscode.Uri) => boolean,
): Api {
  const bar = statusBar(client);
  const sheet = liveSheet(context, client);
  const running = client.start().then(async () => {
    context.subscriptions.push(await sendFiles(client, readsFolder));
    bar.refresh();
  });
  const readCommits = vscode.workspace.onDidGrantWorkspaceTrust(() =>
    running.then(() => client.sendNotification('boothwright/readsCommits')),
  );
  context.subscriptions.push(
    bar,
    sheet,
    readCommits,
    vscode.commands.registerCommand('boothwright.openSheet', (uri?: unknown, position?: unknown) =>
      sheet.open(uri, position),
    ),
    vscode.workspace.registerTextDocumentContentProvider(catalogueScheme, provideCatalogue(client)),
    vscode.workspace.registerTextDocumentContentProvider(pageScheme, providePages(context.extensionUri)),
    vscode.commands.registerCommand('boothwright.explainProblem', explainProblem),
    vscode.commands.registerCommand('boothwright.restartServer', () => restart(client)),
    vscode.commands.registerCommand('boothwright.showCatalogue', showCatalogue),
    vscode.commands.registerCommand('boothwright.showOutput', () => client.outputChannel.show()),
    vscode.commands.registerCommand('boothwright.showWalkthrough', () =>
      vscode.commands.executeCommand('workbench.action.openWalkthrough', `${context.extension.id}#start`, false),
    ),
    vscode.commands.registerCommand('boothwright.newSpec', (answers?: unknown) => newSpec(client, answers)),
    vscode.commands.registerCommand('boothwright.openExample', (name?: unknown, into?: unknown) =>
      openExample(context.extensionUri, name, into),
    ),
  );
  return { ready: running, statusText: bar.text };
}

/** Starts the server anew, also one that did not start or does not end when it is told to. */
async function restart(client: BaseLanguageClient): Promise<void> {
  await client.stop().catch(() => undefined);
  await client.start();
}
