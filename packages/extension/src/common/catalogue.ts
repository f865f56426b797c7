import * as vscode from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';

/** Scheme of the read-only document that holds the catalogue; the server names the same. */
export const catalogueScheme = 'booth-catalog';
const catalogueUri = vscode.Uri.from({ scheme: catalogueScheme, path: '/catalog.booth' });

/** The server holds the catalogue, so that what is read and what is shown are one text. */
export function provideCatalogue(client: BaseLanguageClient): vscode.TextDocumentContentProvider {
  return {
    async provideTextDocumentContent() {
      await client.start();
      return client.sendRequest<string>('boothwright/catalogue');
    },
  };
}

export async function showCatalogue(): Promise<void> {
  const document = await vscode.workspace.openTextDocument(catalogueUri);
  await vscode.window.showTextDocument(document, { preview: false });
}
