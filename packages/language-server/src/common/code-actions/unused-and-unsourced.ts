import { symbolAt } from '@boothwright/language';
import type { View } from '../view.js';
import type { Candidate } from './candidate.js';
import { intoBlock, withoutStatement } from './lines.js';

/** On a declaration: taking away what nothing uses, and asking where the figures of a material are from. */
export function unusedAndUnsourced(view: View, offset: number): Candidate[] {
  const symbol = symbolAt(view.checked.symbols, view.file, offset)?.symbol;
  if (symbol === undefined || symbol.range.file !== view.file || symbol.range.from > offset) return [];
  const statement = view.parsed.tree.statements.find(({ from }) => from === symbol.range.from);
  if (statement === undefined) return [];
  const found: Candidate[] = [];
  const hasBooth = view.parsed.tree.statements.some(({ keyword }) => keyword.word === 'booth');
  // A file without a booth is there for others to use.
  if (hasBooth && symbol.references.length === 0 && ['let', 'material', 'assembly'].includes(symbol.kind)) {
    found.push({
      title: `Remove \`${symbol.name}\`, which nothing uses`,
      changes: [withoutStatement(view.text, statement)],
    });
  }
  const facts = statement.block?.statements ?? [];
  const isUnsourced =
    symbol.kind === 'material' &&
    !facts.some(({ keyword, clause }) => keyword.word === 'source' || clause !== undefined);
  const change = isUnsourced
    ? intoBlock(view.text, statement, 'source  # where its figures are from, in quotes')
    : undefined;
  if (change !== undefined) {
    found.push({ title: `Add \`source\` to \`${symbol.name}\`, to be filled in`, changes: [change], asks: true });
  }
  return found;
}
