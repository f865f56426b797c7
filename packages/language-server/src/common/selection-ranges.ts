import type { Expression, Slot, Span, Statement } from '@boothwright/language';
import type { Position, SelectionRange } from 'vscode-languageserver';
import type { View } from './view.js';

/** For each position the stretches that hold it, the inner first: word, value, fact, block, the whole text. */
export function selectionRanges(view: View, positions: readonly Position[]): SelectionRange[] {
  return positions.map((position) => chain(view, spansAt(view, view.lines.offsetAt(position))));
}

function chain(view: View, spans: readonly Span[]): SelectionRange {
  let outer: SelectionRange | undefined;
  for (const span of spans) {
    const range = view.lines.rangeOf(span);
    outer = outer === undefined ? { range } : { range, parent: outer };
  }
  return outer!;
}

/** The outermost first; each lies within the one before it and is shorter. */
function spansAt(view: View, offset: number): Span[] {
  const candidates: Span[] = [{ from: 0, to: view.text.length }];
  const holds = ({ from, to }: Span): boolean => from <= offset && offset <= to;
  const add = (span: Span): boolean => {
    const held = holds(span);
    if (held) candidates.push(span);
    return held;
  };
  let inside: readonly Statement[] = view.parsed.tree.statements;
  for (;;) {
    const statement = inside.find(holds);
    if (statement === undefined) break;
    add(statement);
    add({ from: statement.from, to: statement.headerTo });
    add(statement.keyword);
    for (const slot of statement.slots.values()) if (slot.file === undefined) addSlot(slot, add);
    const { block } = statement;
    if (block === undefined || !holds(block)) break;
    add(block);
    add(contents(view.text, { from: block.from + 1, to: block.closed ? block.to - 1 : block.to }));
    inside = block.statements;
  }
  addTokens(view, offset, add);
  return nested(candidates);
}

/** A block's inside without the blanks at its ends. */
function contents(text: string, { from, to }: Span): Span {
  const inner = text.slice(from, to);
  const start = from + inner.length - inner.trimStart().length;
  return { from: start, to: Math.max(start, from + inner.trimEnd().length) };
}

function addSlot(slot: Slot, add: (span: Span) => boolean): void {
  if (!add(slot)) return;
  switch (slot.kind) {
    case 'expression':
      addExpression(slot.expression, add);
      return;
    case 'words':
      for (const word of slot.words) add(word);
      return;
    case 'bands':
      for (const band of slot.bands) {
        add(band);
        addExpression(band.frequency, add);
        addExpression(band.value, add);
      }
      return;
    case 'pairs':
      for (const pair of slot.pairs) {
        add(pair);
        addExpression(pair.first, add);
        addExpression(pair.second, add);
      }
      return;
    case 'price':
      addExpression(slot.amount, add);
      return;
    case 'hours':
      for (const span of slot.spans) add(span);
      return;
    default:
      return;
  }
}

function addExpression(expression: Expression, add: (span: Span) => boolean): void {
  if (!add(expression)) return;
  if (expression.kind === 'negate') addExpression(expression.operand, add);
  if (expression.kind !== 'binary') return;
  addExpression(expression.left, add);
  addExpression(expression.right, add);
}

/** The word itself, what stands between quotes, a comment and the run of comments that it belongs to. */
function addTokens(view: View, offset: number, add: (span: Span) => boolean): void {
  const { tokens } = view.parsed;
  tokens.forEach((token, i) => {
    if (token.kind === 'newline' || token.from > offset || token.to < offset) return;
    if (token.kind === 'symbol' || token.kind === 'other') return;
    add(token);
    if (token.kind === 'string' && token.to - token.from >= 2) add({ from: token.from + 1, to: token.to - 1 });
    if (token.kind === 'comment' && isAlone(i)) {
      const first = edge(i, -1);
      const last = edge(i, 1);
      add({ from: tokens[first]!.from, to: tokens[last]!.to });
    }
  });

  function isAlone(i: number): boolean {
    return tokens[i]?.kind === 'comment' && (i === 0 || tokens[i - 1]!.kind === 'newline');
  }
  function edge(i: number, step: 1 | -1): number {
    let at = i;
    while (tokens[at + step]?.kind === 'newline' && isAlone(at + 2 * step)) at += 2 * step;
    return at;
  }
}

/** From the longest to the shortest, without those that only overlap the one before: a place between two words. */
function nested(candidates: readonly Span[]): Span[] {
  const result: Span[] = [];
  for (const span of [...candidates].sort((a, b) => b.to - b.from - (a.to - a.from))) {
    const outer = result.at(-1);
    if (outer === undefined) result.push(span);
    else if (outer.from <= span.from && span.to <= outer.to && span.to - span.from < outer.to - outer.from)
      result.push(span);
  }
  return result;
}
