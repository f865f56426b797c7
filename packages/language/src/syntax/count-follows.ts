import { isUnitWord } from '../units/unit-names.js';
import { parseExpression } from './parse-expression.js';
import { BrokenLine, type ParserState, peek } from './parser-state.js';

/** In `12 mm 7 at` the first value is not yet the count, in `7 at` it is; `12 mm at` lacks its count. */
export function countFollows(state: ParserState, words: ReadonlySet<string>): boolean {
  const trial: ParserState = { ...state, problems: [], strays: [], passed: [], probe: undefined };
  const [first, after] = [peek(state), peek(state, 1)];
  const isMeasure = first.kind === 'number' && after.kind === 'word' && isUnitWord(after.text);
  try {
    parseExpression(trial, { expected: '', hint: undefined, dimension: 'any', words });
    const behind = peek(trial);
    if (behind.text === 'at') return isMeasure && trial.index === state.index + 2;
    if (behind.kind === 'number' || behind.kind === 'word' || behind.text === '(') return true;
  } catch (error) {
    if (!(error instanceof BrokenLine)) throw error;
  }
  if (first.kind === 'number') return isMeasure;
  return after.kind === 'number' || (after.kind === 'word' && after.text !== 'at');
}
