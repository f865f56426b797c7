import type { Unread } from '../model/booth-spec.js';
import type { Problem } from '../model/problem.js';
import type { SourceRange } from '../model/sourced.js';
import type { BlockNode, Statement } from '../syntax/tree.js';
import { surelyMeant } from '../text/surely-meant.js';
import { blockOf } from '../vocabulary/vocabulary.js';
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
  const declarationAt = finderOf(statements);
  for (const { severity, message, range } of problems) {
    if (severity !== 'error') continue;
    const around = declarationAt(range);
    // Each kind of requirement is a keyword of its own: `require co2`.
    const keyword = around?.fact?.keyword.split(' ')[0];
    if (keyword === 'variant' && around !== inVariant) continue;
    // No prediction rests on what was measured, unless the block has swallowed what follows it.
    if (keyword === 'measured' && around?.block?.closed) continue;
    // A requirement of a kind that does not exist is still one: nothing else was meant by the line.
    const word = keyword ?? around?.keyword.word;
    const part = word !== undefined && parts.has(word) ? (word as Unread['part']) : 'outside';
    const name = around === undefined ? undefined : nameOf(around)?.name;
    unread.push({ part, name, within: around === undefined ? [] : withinOf(around, range), message, range });
  }
  return unread;
}

/** Finds the declaration that a place stands in, without going through all of them for each place. */
function finderOf(statements: readonly Statement[]): (range: SourceRange) => Statement | undefined {
  const byFile = new Map<string, Statement[]>();
  for (const statement of statements) {
    const list = byFile.get(statement.file);
    if (!list) byFile.set(statement.file, [statement]);
    // A line that strayed into a block is listed behind it; the block is what holds it.
    else if (statement.from > list.at(-1)!.to) list.push(statement);
  }
  return ({ file, from }) => {
    const list = byFile.get(file) ?? [];
    let [low, high] = [0, list.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (list[middle]!.from <= from) low = middle + 1;
      else high = middle;
    }
    const found = list[low - 1];
    return found && from <= found.to ? found : undefined;
  };
}

/**
 * The lines of the declaration that hold the error, outside first. It ends where a keyword is not known, unless its first
 * word is misspelt so that it can only have been one line, and where a block is not closed: such a block has swallowed
 * what follows, which is lost as well.
 */
function withinOf({ block }: Statement, range: SourceRange): string[] {
  if (block?.closed !== true) return [];
  const line = block.statements.find(({ from, to }) => from <= range.from && range.from <= to);
  if (line === undefined || (line.block !== undefined && !line.block.closed)) return [];
  if (line.fact !== undefined) return [line.fact.keyword, ...withinOf(line, range)];
  const meant = lineMeant(line, block);
  return meant === undefined ? [] : [meant];
}

/** The one line of the block that a misspelt first word stands for; a word that several lines begin with leaves it open. */
function lineMeant(line: Statement, block: BlockNode): string | undefined {
  const keywords = blockOf(block.name).facts.map(({ keyword }) => keyword);
  // Where a line may start with any name, an unknown word can be such a name.
  if (keywords.includes('')) return undefined;
  const first = (keyword: string) => keyword.split(' ')[0]!;
  const word = surelyMeant(line.keyword.word, keywords.map(first));
  const lines = keywords.filter((keyword) => word !== undefined && first(keyword) === word);
  return lines.length === 1 ? lines[0] : undefined;
}
