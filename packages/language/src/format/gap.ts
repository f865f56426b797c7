import type { Token } from '../syntax/token.js';

const AROUND = new Set(['=', '<=', '>=', '<', '>', '==', '..', '±', '+/-', '{', '}', '×', '+', '*']);

/** The blank between two tokens of a line. Where a blank carries meaning, as around a minus, it stays as it is. */
export function gap(before: Token, after: Token): string {
  if (isSymbol(after, ',') || isSymbol(after, ';') || isSymbol(after, ')')) return '';
  if (isSymbol(before, '(')) return '';
  if (isSymbol(before, ',') || isSymbol(before, ';')) return ' ';
  if (around(before) || around(after) || before.kind === 'string' || after.kind === 'string') return ' ';
  if (before.kind === 'number' && (after.kind === 'word' || isSymbol(after, '%'))) return ' ';
  return after.spaced ? ' ' : '';
}

function around(token: Token): boolean {
  return token.kind === 'symbol' && AROUND.has(token.text);
}

function isSymbol(token: Token, text: string): boolean {
  return token.kind === 'symbol' && token.text === text;
}

/**
 * True for a slash that divides values. Between two words it may be one inside a unit, such as `kg/m2`, where a blank
 * would change what is meant.
 */
function dividesAt(tokens: readonly Token[], i: number): boolean {
  const [before, slash, after] = [tokens[i - 1], tokens[i], tokens[i + 1]];
  if (!before || !slash || !after || !isSymbol(slash, '/')) return false;
  return isSymbol(before, ')') || isSymbol(after, '(') || after.kind === 'number';
}

/** A line's tokens with their canonical blanks. */
export function join(tokens: readonly Token[]): string {
  let result = '';
  tokens.forEach((token, i) => {
    const isAtDivision = dividesAt(tokens, i) || dividesAt(tokens, i - 1);
    result += (i === 0 ? '' : isAtDivision ? ' ' : gap(tokens[i - 1]!, token)) + token.text;
  });
  return result;
}
