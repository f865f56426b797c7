import * as vscode from 'vscode';
import type { LanguageClientOptions } from 'vscode-languageclient';
import { catalogueScheme } from './catalogue.js';
import { pagesAddress } from './pages.js';

/** The same for a server in a process and one in a web worker. */
export function clientOptions(): LanguageClientOptions {
  // Folders of a virtual or remote workspace have schemes of their own; views of a version history are left alone.
  const folders = (vscode.workspace.workspaceFolders ?? []).map(({ uri }) => uri.scheme);
  const schemes = new Set(['file', 'untitled', catalogueScheme, ...folders]);
  return {
    documentSelector: [...schemes].map((scheme) => ({ scheme, language: 'booth' })),
    synchronize: {
      configurationSection: 'boothwright',
      fileEvents: vscode.workspace.createFileSystemWatcher('**/*.booth'),
    },
    initializationOptions: {
      // This editor can open the catalogue as a document, so names may lead there.
      catalogueDocument: true,
      pictures: true,
      sheet: true,
      // Git is asked what was committed; in a workspace that is not trusted it may be told to run something.
      readsCommits: vscode.workspace.isTrusted,
      documentation: pagesAddress,
      // As plain values: the editor's own object has methods, which cannot be sent to a web worker.
      boothwright: JSON.parse(JSON.stringify(vscode.workspace.getConfiguration('boothwright'))),
    },
  };
}
