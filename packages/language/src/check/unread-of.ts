import type { Unread } from '../model/booth-spec.js';
import type { Problem } from '../model/problem.js';
import type { Statement } from '../syntax/tree.js';
import { nameOf } from './block-reader.js';

const parts: ReadonlySet<string> = new Set([
  'use',
  'let',
  'material',
  'assembly',
  'site',
  'booth',
  'session',
  'budget',
  'require',
]);

/**
 * The errors of a text by the declaration they stand in. An error inside a variant block is left out unless
 * `inVariant` names that block, since the base does not depend on it.
 */
export function unreadOf(
  problems: readonly Problem[],
  statements: readonly Statement[],
  inVariant?: Statement,
): readonly Unread[] {
  const unread: Unread[] = [];
  for (const { severity, message, range } of problems) {
    if (severity !== 'error') continue;
    const around = statements.find(
      (statement) => statement.file === range.file && statement.from <= range.from && range.from <= statement.to,
    );
    // Each kind of requirement is a keyword of its own: `require co2`.
    const keyword = around?.fact?.keyword.split(' ')[0];
    if (keyword === 'variant' && around !== inVariant) continue;
    const part = keyword !== undefined && parts.has(keyword) ? (keyword as Unread['part']) : 'outside';
    const name = around === undefined ? undefined : nameOf(around)?.name;
    unread.push({ part, name, message, range });
  }
  return unread;
}
