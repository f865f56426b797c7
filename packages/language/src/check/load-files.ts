import { catalogue } from '../catalog/catalogue.js';
import { CATALOGUE_FILE } from '../catalog/catalogue-file.js';
import { limits } from '../limits.js';
import type { Problem } from '../model/problem.js';
import type { SourceRange } from '../model/sourced.js';
import type { ParsedFile } from '../syntax/parsed-file.js';
import type { Slot, Statement } from '../syntax/tree.js';
import { rangeIn } from './context.js';
import { resolvePath } from './resolve-path.js';

export type ParsedAnswer =
  | ParsedFile
  | { readonly kind: 'missing' }
  | { readonly kind: 'refused' | 'unreadable'; readonly reason: string };

export interface LoadedFiles {
  /** The entry first, then what it uses in order; the catalogue last. */
  readonly files: readonly ParsedFile[];
  readonly problems: readonly Problem[];
  /** A used file could not be read: names that are missing may be declared there. */
  readonly incomplete: boolean;
}

/** Follows `use` from the entry; each file is read once, a cycle is an error that names it. */
export function loadFiles(entry: ParsedFile, read: (path: string) => ParsedAnswer): LoadedFiles {
  const files = new Map<string, ParsedFile>([[entry.file, entry]]);
  const problems: Problem[] = [];
  let usesCatalogue = false;
  let incomplete = false;
  // Files that are not there cost a look each, so they count as well.
  let missing = 0;
  const complain = (id: string, range: SourceRange, message: string, hint?: string): undefined => {
    incomplete = true;
    problems.push({ id, severity: 'error', message, range, ...(hint ? { hint } : {}) });
    return undefined;
  };

  const visit = (file: ParsedFile, chain: readonly string[]): void => {
    for (const statement of file.tree.statements) {
      if (statement.fact?.keyword !== 'use') continue;
      const slot = statement.slots.get('path');
      if (statement.slots.has('catalog')) usesCatalogue = true;
      else if (slot?.kind === 'string') follow(file, statement, slot, chain);
    }
  };

  const follow = (
    file: ParsedFile,
    statement: Statement,
    slot: Extract<Slot, { kind: 'string' }>,
    chain: readonly string[],
  ): undefined => {
    const range = rangeIn(statement.file, slot);
    const resolved = resolvePath(file.file, slot.value);
    if ('refused' in resolved)
      return complain(
        'path-refused',
        range,
        `\`${slot.value}\` cannot be used: ${resolved.refused}`,
        'write it like `use "./my-materials.booth"`',
      );
    const { path } = resolved;
    if (chain.includes(path)) {
      const cycle = [...chain.slice(chain.indexOf(path)), path].join(' -> ');
      return complain(
        'use-cycle',
        range,
        `these files use each other in a circle: ${cycle}`,
        'move what both need into a file of its own',
      );
    }
    if (files.has(path)) return undefined;
    if (files.size + missing > limits.files) return undefined;
    if (files.size + missing === limits.files) {
      missing++;
      return complain('too-many-files', range, `a spec may use at most ${limits.files} files`);
    }
    const answer = read(path);
    if (!('tree' in answer)) {
      missing++;
      if (answer.kind === 'missing')
        return complain(
          'file-missing',
          range,
          `there is no file \`${path}\``,
          'paths start from the folder of this file',
        );
      return complain('file-unreadable', range, `\`${path}\` cannot be read: ${answer.reason}`);
    }
    files.set(path, answer);
    visit(answer, [...chain, path]);
    return undefined;
  };

  visit(entry, [entry.file]);
  const list = [...files.values()];
  return {
    files: usesCatalogue && entry.file !== CATALOGUE_FILE ? [...list, catalogue()] : list,
    problems,
    incomplete,
  };
}
