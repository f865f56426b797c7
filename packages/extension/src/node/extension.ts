import * as vscode from 'vscode';
import type { LanguageClient } from 'vscode-languageclient/node.js';
import { catalogueScheme, provideCatalogue, showCatalogue } from './catalogue.js';
import { createClient } from './create-client.js';

let client: LanguageClient | undefined;

/** What other extensions and the tests in the editor may hold on to. */
export interface Api {
  /** Settles when the language server answers. */
  readonly ready: Promise<void>;
}

export function activate(context: vscode.ExtensionContext): Api {
  client = createClient(context);
  const running = client;
  context.subscriptions.push(
    vscode.workspace.registerTextDocumentContentProvider(catalogueScheme, provideCatalogue(running)),
    vscode.commands.registerCommand('boothwright.restartServer', () => restart(running)),
    vscode.commands.registerCommand('boothwright.showCatalogue', showCatalogue),
  );
  return { ready: running.start() };
}

/** Starts the server anew, also one that did not start or does not end when it is told to. */
async function restart(running: LanguageClient): Promise<void> {
  await running.stop().catch(() => undefined);
  await running.start();
}

export function deactivate(): Promise<void> | undefined {
  return client?.stop();
}
