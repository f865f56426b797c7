import type { DimensionName } from '../units/dimension.js';
import { BrokenLine, isSymbol, next, type ParserState, peek, report } from './parser-state.js';
import type { Expression, Slot, Span } from './tree.js';

interface PairsReader {
  readonly slot: string;
  readonly dimensions: readonly [DimensionName, DimensionName];
  readonly slots: Map<string, Slot>;
  readonly example: string;
  readonly value: (dimension: DimensionName) => Expression;
}

/** Points of two values each, separated by commas: `0 L/s 120 Pa, 20 L/s 80 Pa`. */
export function parsePairs(state: ParserState, { slot, dimensions, slots, example, value }: PairsReader): void {
  const pairs: (Span & { first: Expression; second: Expression })[] = [];
  do {
    if (pairs.length > 0) next(state);
    const first = value(dimensions[0]);
    const second = value(dimensions[1]);
    pairs.push({ first, second, from: first.from, to: second.to });
    slots.set(slot, { kind: 'pairs', pairs, from: pairs[0]!.from, to: second.to });
  } while (isSymbol(peek(state), ','));
  if (peek(state).kind !== 'number') return;
  report(state, 'comma-missing', peek(state), 'a comma is missing between two points', `write it like \`${example}\``);
  throw new BrokenLine();
}
