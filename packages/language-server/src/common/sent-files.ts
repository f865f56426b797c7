import type { Connection } from 'vscode-languageserver';
import { decoded, uriOfPlace } from './file-place.js';
import { longestText, tooLong } from './longest-text.js';
import type { Platform } from './platform.js';

/** A file of a workspace that the server cannot read itself; `text` is null for one that is gone. */
export interface SentFile {
  readonly uri: string;
  readonly text: string | null;
}

/** More are not kept: a spec may use no more than that. */
const mostFiles = 1000;

/**
 * Files of a folder that only the editor can read, as it sends them by `boothwright/files`. What rests on them is
 * looked at again when the editor tells of changed files, so it sends first and tells then.
 */
export function receiveFiles(connection: Connection): Pick<Platform, 'read' | 'list'> {
  const files = new Map<string, string>();
  connection.onNotification('boothwright/files', ({ files: sent }: { files: readonly SentFile[] }) => {
    for (const { uri, text } of sent) {
      const key = decoded(uri);
      if (text === null) files.delete(key);
      else if (files.has(key) || files.size < mostFiles) files.set(key, text);
    }
  });
  return {
    read(folderUri, path) {
      const text = files.get(decoded(uriOfPlace({ folderUri: folderUri.replace(/\/+$/, ''), path })));
      if (text === undefined) return { kind: 'missing' };
      return text.length > longestText ? { kind: 'refused', reason: tooLong(text) } : { kind: 'text', text };
    },
    async list(folderUri) {
      const start = `${decoded(folderUri.replace(/\/+$/, ''))}/`;
      return [...files.keys()].filter((uri) => uri.startsWith(start)).map((uri) => uri.slice(start.length));
    },
  };
}
