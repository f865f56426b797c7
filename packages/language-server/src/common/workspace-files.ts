import { catalogueUri } from './catalogue-uri.js';
import { sameUri, uriOfPlace } from './file-place.js';
import type { Platform } from './platform.js';
import type { OpenDocument } from './workspace.js';

export interface WorkspaceFile {
  readonly uri: string;
  readonly text: string;
}

export interface WorkspaceFilesOptions {
  readonly platform: Pick<Platform, 'read' | 'list'>;
  folders(): readonly string[];
  documents(): readonly OpenDocument[];
}

/**
 * Every spec of the workspace with its text: the open ones as they are in the editor, the others as they are stored.
 */
export async function workspaceFiles(options: WorkspaceFilesOptions): Promise<readonly WorkspaceFile[]> {
  const files: WorkspaceFile[] = options
    .documents()
    .filter(({ uri }) => !sameUri(uri, catalogueUri))
    .map((document) => ({ uri: document.uri, text: document.getText() }));
  for (const folder of options.folders()) {
    const folderUri = folder.replace(/\/+$/, '');
    for (const path of await options.platform.list(folderUri)) {
      const uri = uriOfPlace({ folderUri, path });
      if (files.some((known) => sameUri(known.uri, uri))) continue;
      const answer = options.platform.read(folderUri, path);
      if (answer.kind === 'text') files.push({ uri, text: answer.text });
    }
  }
  return files;
}
