import { isLengthUnit } from '../units/unit-names.js';
import type { Token, TokenKind } from './token.js';

const WORD = /[\p{L}_°µμ][\p{L}\p{N}_²³]*(?:-[\p{L}\p{N}_]+)*/uy;
const NUMBER = /\d+(?:\.\d+)?(?:[eE][+-]?\d+(?![\p{L}\d]))?/uy;
const MIXED = /(?:\d+-)?\d+\/\d+(?![\d.])/y;
const NOMINAL = /\d+x\d+(?![\p{L}\d.])/uy;
const NEXT_WORD = /[ \t]*([\p{L}]+)/uy;
const SYMBOLS = ['..', '<=', '>=', '==', '+/-'];
const SINGLE = new Set('{}()=;,.+-*/%<>±×·^−');

/**
 * Cuts a text into tokens; the tokens and the blanks between them are the whole text.
 * A number swallows `-1/2` only before a unit of length, so `2-1/2 in` is one number and `2 - 1/2` a difference.
 */
export function lex(text: string): readonly Token[] {
  const tokens: Token[] = [];
  let at = 0;
  let spaced = true;
  const push = (kind: TokenKind, to: number): void => {
    tokens.push({ kind, from: at, to, text: kind === 'newline' ? '' : text.slice(at, to), spaced });
    at = to;
    spaced = kind === 'newline';
  };
  while (at < text.length) {
    const c = text[at]!;
    if (c === ' ' || c === '\t' || c === '\u00a0' || c === '\ufeff') {
      at++;
      spaced = true;
    } else if (c === '\n') push('newline', at + 1);
    else if (c === '\r') push('newline', text[at + 1] === '\n' ? at + 2 : at + 1);
    else if (c === '#' && spaced) push('comment', lineEnd(text, at));
    else if (c === '"') push('string', stringEnd(text, at));
    else if (c >= '0' && c <= '9') push(numberKind(text, at), numberEnd(text, at));
    else {
      const word = matchEnd(WORD, text, at);
      if (word !== undefined) push('word', word);
      else {
        const symbol = SYMBOLS.find((s) => text.startsWith(s, at));
        if (symbol) push('symbol', at + symbol.length);
        else if (SINGLE.has(c)) push('symbol', at + 1);
        else push('other', at + (text.codePointAt(at)! > 0xffff ? 2 : 1));
      }
    }
  }
  push('newline', text.length);
  return tokens;
}

function matchEnd(pattern: RegExp, text: string, at: number): number | undefined {
  pattern.lastIndex = at;
  return pattern.test(text) ? pattern.lastIndex : undefined;
}

function numberKind(text: string, at: number): 'number' | 'nominal' {
  return matchEnd(NOMINAL, text, at) === undefined ? 'number' : 'nominal';
}

function numberEnd(text: string, at: number): number {
  const nominal = matchEnd(NOMINAL, text, at);
  if (nominal !== undefined) return nominal;
  const mixed = matchEnd(MIXED, text, at);
  if (mixed !== undefined) {
    NEXT_WORD.lastIndex = mixed;
    const next = NEXT_WORD.exec(text);
    if (next && isLengthUnit(next[1]!)) return mixed;
  }
  return matchEnd(NUMBER, text, at)!;
}

function lineEnd(text: string, at: number): number {
  let end = at;
  while (end < text.length && text[end] !== '\n' && text[end] !== '\r') end++;
  return end;
}

/** Up to and with the closing quote; without one, to the end of the line, but a `{` at that end still opens its block. */
function stringEnd(text: string, at: number): number {
  const end = lineEnd(text, at);
  const quote = text.indexOf('"', at + 1);
  if (quote !== -1 && quote < end) return quote + 1;
  const line = text.slice(at, end).trimEnd();
  return at + (line.endsWith('{') && line.length > 1 ? line.slice(0, -1).trimEnd().length : line.length);
}

/** Value of a number token: `12.5`, `3/4`, `2-1/2`. */
export function numberValue(text: string): number {
  const slash = text.indexOf('/');
  if (slash === -1) return Number(text);
  const hyphen = text.indexOf('-');
  const whole = hyphen === -1 ? 0 : Number(text.slice(0, hyphen));
  return whole + Number(text.slice(hyphen + 1, slash)) / Number(text.slice(slash + 1));
}
