import { type Expression, type Statement, symbolAt } from '@boothwright/language';
import type { View } from '../view.js';
import type { Candidate } from './candidate.js';
import { withoutStatement } from './lines.js';

/**
 * Puts the value of a `let` in every place that uses it and takes the `let` away. Not offered where a variant changes the
 * value, since the variant would lose what it changes, or where another file uses it.
 */
export function inlineLet(view: View, offset: number): Candidate[] {
  const symbol = symbolAt(view.checked.symbols, view.file, offset)?.symbol;
  if (symbol?.kind !== 'let' || symbol.range.file !== view.file || symbol.references.length === 0) return [];
  if (symbol.references.some(({ file }) => file !== view.file)) return [];
  const declaration = view.parsed.tree.statements.find(({ from }) => from === symbol.range.from);
  const slot = declaration?.slots.get('value');
  if (declaration === undefined || slot?.kind !== 'expression' || !declaration.complete) return [];
  const value = view.text.slice(slot.from, slot.to);
  const isChanged = symbol.references.some((place) => stands(view.parsed.tree.statements, 'variant', place.from, true));
  if (isChanged) return [];
  const put = slot.expression.kind === 'binary' || slot.expression.kind === 'negate' ? `(${value})` : value;
  return [
    {
      title: `Put \`${value}\` in place of \`${symbol.name}\`${symbol.references.length > 1 ? ` in ${symbol.references.length} places` : ''}`,
      changes: [
        ...symbol.references.map(({ from, to }) => ({ from, to, text: isAlone(view, from, to) ? value : put })),
        withoutStatement(view.text, declaration),
      ],
    },
  ];
}

/** True for a place at the start of a line of a variant: the name of what it changes. */
function stands(statements: readonly Statement[], keyword: string, offset: number, atStart: boolean): boolean {
  const outer = statements.find(({ from, to }) => from <= offset && offset < to);
  if (outer?.keyword.word !== keyword) return false;
  const inner = outer.block?.statements.find(({ from, to }) => from <= offset && offset < to);
  return inner !== undefined && (inner.from === offset) === atStart;
}

/** True when the name is the whole value, so that a sum needs no parentheses. */
function isAlone(view: View, from: number, to: number): boolean {
  const found: Expression[] = [];
  const walk = (statements: readonly Statement[]): void => {
    for (const statement of statements) {
      if (statement.to < from || statement.from > to) continue;
      for (const slot of statement.slots.values()) {
        if (slot.kind === 'expression' && slot.from === from && slot.to === to) found.push(slot.expression);
      }
      walk(statement.block?.statements ?? []);
    }
  };
  walk(view.parsed.tree.statements);
  return found.length > 0;
}
