import { isLengthUnit } from '../units/unit-names.js';
import type { Token, TokenKind } from './token.js';

/** Anything beyond the plain letters; those take the quick way. */
const WORD = /[\p{L}_°µμ][\p{L}\p{N}_²³]*(?:-[\p{L}\p{N}_]+)*/uy;
const NUMBER = /\d+(?:\.\d+)?(?:[eE][+-]?\d+(?![\p{L}\d]))?/uy;
const MIXED = /(?:\d+-)?\d+\/\d+(?![\d.])/y;
const CLOCK = /\d+:\d+/y;
const INCH_SIGN = /["”″]/y;
const NOMINAL = /\d+x\d+(?![\p{L}\d.])/uy;
const NEXT_WORD = /[ \t]*([\p{L}]+)/uy;
const SYMBOLS = ['..', '<=', '>=', '==', '+/-'];
const DOUBLE_STARTS = new Set(SYMBOLS.map((symbol) => symbol[0]));
const SINGLE = new Set('{}()=;,.+-*/%<>±×·^−');

/**
 * Cuts a text into tokens; the tokens and the blanks between them are the whole text.
 * A number swallows `-1/2` only before a unit of length, so `2-1/2 in` is one number and `2 - 1/2` a difference.
 */
export function lex(text: string): readonly Token[] {
  return lexBetween(text, 0, text.length);
}

/** The tokens of a stretch that begins behind the blanks at the start of a line and ends likewise, or with the text. */
export function lexBetween(text: string, from: number, to: number): readonly Token[] {
  const tokens: Token[] = [];
  let at = from;
  let spaced = true;
  const push = (kind: TokenKind, to: number): void => {
    tokens.push({ kind, from: at, to, text: kind === 'newline' ? '' : text.slice(at, to), spaced });
    at = to;
    spaced = kind === 'newline';
  };
  while (at < to) {
    const c = text[at]!;
    if (c === ' ' || c === '\t' || c === '\u00a0' || c === '\ufeff') {
      at++;
      spaced = true;
    } else if (c === '\n') push('newline', at + 1);
    else if (c === '\r') push('newline', text[at + 1] === '\n' ? at + 2 : at + 1);
    else if (c === '#' && spaced) push('comment', lineEnd(text, at));
    // A comment of other languages, which the parser complains about.
    else if (c === '/' && spaced && text[at + 1] === '/') push('comment', lineEnd(text, at));
    // Glued to a number it is an inch sign, and must not swallow the line.
    else if (c === '"' && !spaced && isMeasure(tokens.at(-1))) push('other', at + 1);
    else if (c === '"') push('string', stringEnd(text, at));
    else if (c >= '0' && c <= '9') {
      const nominal = nominalEnd(text, at);
      const clock = nominal === undefined ? clockEnd(text, at) : undefined;
      if (nominal !== undefined) push('nominal', nominal);
      else if (clock !== undefined) push('clock', clock);
      else push('number', numberEnd(text, at));
    } else {
      const word = wordEnd(text, at);
      if (word !== undefined) push('word', word);
      else {
        const symbol = DOUBLE_STARTS.has(c) ? SYMBOLS.find((s) => text.startsWith(s, at)) : undefined;
        if (symbol) push('symbol', at + symbol.length);
        else if (SINGLE.has(c)) push('symbol', at + 1);
        else push('other', at + (text.codePointAt(at)! > 0xffff ? 2 : 1));
      }
    }
  }
  if (to === text.length) push('newline', to);
  return tokens;
}

/** A number, or the `x4` of `2"x4"`. */
function isMeasure(token: Token | undefined): boolean {
  return token?.kind === 'number' || token?.kind === 'nominal' || /^[xX]\d+$/.test(token?.text ?? '');
}

function matchEnd(pattern: RegExp, text: string, at: number): number | undefined {
  pattern.lastIndex = at;
  return pattern.test(text) ? pattern.lastIndex : undefined;
}

/** Most words are plain: read them by hand and leave the rest to the pattern. */
function wordEnd(text: string, at: number): number | undefined {
  let end = at;
  if (!isPlainLetter(text.charCodeAt(end)) && text.charCodeAt(end) < 128 && text[end] !== '_') return undefined;
  for (;;) {
    let code = text.charCodeAt(end);
    while (isPlainLetter(code) || isDigit(code) || code === UNDERSCORE) code = text.charCodeAt(++end);
    if (code >= 128) return matchEnd(WORD, text, at);
    if (code !== HYPHEN || end === at) break;
    const after = text.charCodeAt(end + 1);
    if (after >= 128) return matchEnd(WORD, text, at);
    if (!isPlainLetter(after) && !isDigit(after) && after !== UNDERSCORE) break;
    end++;
  }
  return end === at ? matchEnd(WORD, text, at) : end;
}

const HYPHEN = 45;
const UNDERSCORE = 95;

function isPlainLetter(code: number): boolean {
  return (code >= 97 && code <= 122) || (code >= 65 && code <= 90);
}

function isDigit(code: number): boolean {
  return code >= 48 && code <= 57;
}

function digitsEnd(text: string, at: number): number {
  let end = at;
  while (isDigit(text.charCodeAt(end))) end++;
  return end;
}

function nominalEnd(text: string, at: number): number | undefined {
  return text[digitsEnd(text, at)] === 'x' ? matchEnd(NOMINAL, text, at) : undefined;
}

function clockEnd(text: string, at: number): number | undefined {
  return text[digitsEnd(text, at)] === ':' ? matchEnd(CLOCK, text, at) : undefined;
}

function numberEnd(text: string, at: number): number {
  const after = text[digitsEnd(text, at)];
  const mixed = after === '-' || after === '/' ? matchEnd(MIXED, text, at) : undefined;
  if (mixed !== undefined) {
    if (matchEnd(INCH_SIGN, text, mixed) !== undefined) return mixed;
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
  let end = at + 1;
  while (end < text.length && text[end] !== '\n' && text[end] !== '\r') if (text[end++] === '"') return end;
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
