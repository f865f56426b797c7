import fs from 'node:fs';
import path from 'node:path';
import { CATALOGUE_FILE, type SourceAnswer, type SourceHost } from '@boothwright/language';
import { readText } from './read-text.js';

export interface Workspace {
  /** Name of the specification, relative to the workspace folder, with `/`. */
  readonly entry: string;
  readonly host: SourceHost;
  /** How the user would name a file of the workspace. */
  readonly shownAs: (file: string) => string;
}

/**
 * The folder out of which a specification may `use` other files: the current folder when the specification lies in it,
 * otherwise the specification's own folder. Nothing outside is read, not even through a symbolic link.
 */
export function openWorkspace(spec: string, entryText: string, cwd: string): Workspace {
  const absolute = path.resolve(cwd, spec);
  const inside = contains(cwd, absolute) && contains(realPath(cwd), realPath(absolute));
  const root = inside ? cwd : path.dirname(absolute);
  const entry = path.relative(root, absolute).split(path.sep).join('/');
  const prefix = inside ? '' : path.dirname(spec);
  return {
    entry,
    host: { read: (file) => (file === entry ? { kind: 'text', text: entryText } : readBelow(root, file)) },
    // The shipped catalogue lies in no folder.
    shownAs: (file) =>
      file === CATALOGUE_FILE && file !== entry ? file : path.join(prefix, file).split(path.sep).join('/'),
  };
}

function readBelow(root: string, file: string): SourceAnswer {
  const absolute = path.resolve(root, file);
  if (!contains(root, absolute)) return { kind: 'refused', reason: 'it lies outside the workspace folder' };
  if (fs.existsSync(absolute) && !contains(realPath(root), realPath(absolute)))
    return { kind: 'refused', reason: 'a symbolic link leads out of the workspace folder' };
  const answer = readText(absolute, file);
  if (answer.kind === 'text') return { kind: 'text', text: answer.text };
  return answer.missing ? { kind: 'missing' } : { kind: 'unreadable', reason: answer.complaint.message };
}

function realPath(file: string): string {
  try {
    return fs.realpathSync(file);
  } catch {
    return path.resolve(file);
  }
}

function contains(folder: string, file: string): boolean {
  const relative = path.relative(folder, file);
  return relative !== '' && relative.split(path.sep)[0] !== '..' && !path.isAbsolute(relative);
}
