import { readFileSync, realpathSync, statSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import type { SourceAnswer } from '@boothwright/language';
import { longestText } from '../common/longest-text.js';

/**
 * Reads a file below a folder. Links are followed first and the place they lead to must lie below the folder too, so
 * that no text reads what is outside it.
 */
export function readBelow(folderUri: string, file: string): SourceAnswer {
  if (!folderUri.startsWith('file:')) return { kind: 'missing' };
  let found: string;
  let folder: string;
  try {
    folder = realpathSync(fileURLToPath(folderUri));
    found = realpathSync(path.join(folder, ...file.split('/')));
  } catch (error) {
    return failed(error);
  }
  const way = path.relative(folder, found);
  if (way === '' || way === '..' || way.startsWith(`..${path.sep}`) || path.isAbsolute(way)) {
    return { kind: 'refused', reason: 'it leads out of the workspace folder' };
  }
  try {
    const { size } = statSync(found);
    if (!statSync(found).isFile()) return { kind: 'refused', reason: 'it is no file' };
    if (size > longestText) {
      return {
        kind: 'refused',
        reason: `it is ${(size / 1e6).toFixed(1)} MB long; at most ${longestText / 1e6} MB are read`,
      };
    }
    return { kind: 'text', text: readFileSync(found, 'utf8') };
  } catch (error) {
    return failed(error);
  }
}

function failed(error: unknown): SourceAnswer {
  const code = (error as NodeJS.ErrnoException).code;
  if (code === 'ENOENT' || code === 'ENOTDIR') return { kind: 'missing' };
  return { kind: 'unreadable', reason: code ?? String(error) };
}
