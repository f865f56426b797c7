import { parse, resolvePath } from '@boothwright/language';
import type { TextEdit, WorkspaceEdit } from 'vscode-languageserver';
import { decoded, filePlace, uriOfPlace } from './file-place.js';
import { lineTable } from './line-table.js';
import { relativePath } from './relative-path.js';
import type { WorkspaceFile } from './workspace-files.js';

/** A move from one address to another; that of a folder moves all that is in it. */
export interface Move {
  readonly oldUri: string;
  readonly newUri: string;
}

export const movedFiles: { pattern: { glob: string; matches: 'file' | 'folder' } }[] = [
  { pattern: { glob: '**/*.booth', matches: 'file' } },
  { pattern: { glob: '**/*', matches: 'folder' } },
];

/** Every `use` of the workspace that would lead elsewhere or nowhere after the moves, written as it must be then. */
export function followMoves(
  files: readonly WorkspaceFile[],
  moves: readonly Move[],
  folders: readonly string[],
): WorkspaceEdit | null {
  const changes: Record<string, TextEdit[]> = {};
  for (const { uri, text } of files) {
    const place = filePlace(uri, folders);
    const newOwn = filePlace(moved(uri, moves), folders);
    const edits: TextEdit[] = [];
    const lines = lineTable(text);
    for (const { fact, slots } of parse(text, place.path).tree.statements) {
      const path = fact?.keyword === 'use' ? slots.get('path') : undefined;
      if (path?.kind !== 'string') continue;
      const target = resolvePath(place.path, path.value);
      if ('refused' in target) continue;
      const newTarget = filePlace(moved(uriOfPlace({ ...place, path: target.path }), moves), folders);
      // From one folder of the workspace no file of another one can be used.
      if (newTarget.folderUri !== newOwn.folderUri) continue;
      const isSame = newTarget.path === target.path && newOwn.path === place.path;
      const newPath = relativePath(newOwn.path, newTarget.path);
      const resolved = resolvePath(newOwn.path, path.value);
      if (isSame || ('path' in resolved && resolved.path === newTarget.path)) continue;
      edits.push({ range: lines.rangeOf({ from: path.from + 1, to: path.to - 1 }), newText: newPath });
    }
    if (edits.length > 0) changes[uri] = edits;
  }
  return Object.keys(changes).length === 0 ? null : { changes };
}

function moved(uri: string, moves: readonly Move[]): string {
  for (const { oldUri, newUri } of moves) {
    if (decoded(uri) === decoded(oldUri)) return newUri;
    if (decoded(uri).startsWith(`${decoded(oldUri)}/`)) return `${newUri}${uri.slice(oldUri.length)}`;
  }
  return uri;
}
