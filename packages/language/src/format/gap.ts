import type { Token } from '../syntax/token.js';

const AROUND = new Set(['=', '<=', '>=', '<', '>', '==', '..', '±', '+/-', '{', '}', '×']);

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

/** A line's tokens with their canonical blanks. */
export function join(tokens: readonly Token[]): string {
  let result = '';
  tokens.forEach((token, i) => {
    result += (i === 0 ? '' : gap(tokens[i - 1]!, token)) + token.text;
  });
  return result;
}
