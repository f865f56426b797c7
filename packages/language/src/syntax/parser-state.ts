import type { Problem } from '../model/problem.js';
import type { Expectation } from '../symbols/context.js';
import { didYouMean } from '../text/did-you-mean.js';
import type { Token } from './token.js';
import type { Span, Statement } from './tree.js';

/** What the parser holds while it walks the tokens; comments are not among them. */
export interface ParserState {
  readonly file: string;
  readonly text: string;
  readonly tokens: readonly Token[];
  /** Index of the next token. */
  index: number;
  readonly problems: Problem[];
  statements: number;
  /** `let` lines found inside blocks, which count as if they stood outside. */
  readonly strays: Statement[];
  /** Set when completion asks what may stand at one token. */
  readonly probe: { readonly index: number; readonly found: Expectation[] } | undefined;
}

/** Thrown inside the parser only, and caught at the end of the broken line. */
export class BrokenLine extends Error {}

export function peek(state: ParserState, ahead = 0): Token {
  return state.tokens[Math.min(state.index + ahead, state.tokens.length - 1)]!;
}

export function next(state: ParserState): Token {
  const token = peek(state);
  if (state.index < state.tokens.length - 1) state.index++;
  return token;
}

export function previous(state: ParserState): Token | undefined {
  return state.index > 0 ? state.tokens[state.index - 1] : undefined;
}

export function isSymbol(token: Token, text: string): boolean {
  return token.kind === 'symbol' && token.text === text;
}

export function isWord(token: Token, text: string): boolean {
  return token.kind === 'word' && token.text === text;
}

/** Newline, `;`, `}`: what ends a fact. */
export function endsFact(token: Token): boolean {
  return token.kind === 'newline' || (token.kind === 'symbol' && (token.text === ';' || token.text === '}'));
}

/** What ends a fact, or a `{`, which ends its header. */
export function endsLine(token: Token): boolean {
  return endsFact(token) || isSymbol(token, '{');
}

/** Goes past what is left of a line, up to a `{`. */
export function skipLine(state: ParserState): void {
  while (!endsLine(peek(state))) next(state);
}

export function expecting(state: ParserState, expectation: Expectation): void {
  if (state.probe && state.probe.index === state.index) state.probe.found.push(expectation);
}

export function report(state: ParserState, id: string, span: Span, message: string, hint?: string): void {
  state.problems.push({
    id,
    severity: 'error',
    message,
    range: { file: state.file, from: span.from, to: span.to },
    ...(hint === undefined ? {} : { hint }),
  });
}

/** Complains at the next token, or at the end of the line's last token when nothing follows, and gives the line up. */
export function fail(state: ParserState, id: string, expected: string, hint?: string): never {
  const token = peek(state);
  const before = previous(state);
  const atEnd = endsFact(token) || isSymbol(token, '{');
  if (atEnd && before && before.kind !== 'newline')
    report(state, id, before, `expected ${expected} after \`${before.text}\``, hint);
  else if (token.kind === 'string' && !closedString(token)) failUnclosed(state, token);
  else report(state, id, token, `expected ${expected}, found ${describe(token)}`, otherHint(token) ?? hint);
  throw new BrokenLine();
}

export function failUnclosed(state: ParserState, token: Token): never {
  report(state, 'text-not-closed', token, 'this text is never closed', 'add a closing `"`');
  throw new BrokenLine();
}

export function closedString(token: Token): boolean {
  return token.text.length > 1 && token.text.endsWith('"');
}

export function describe(token: Token): string {
  if (token.kind === 'newline') return 'the end of the line';
  return `\`${token.text.length > 40 ? `${token.text.slice(0, 40)}…` : token.text}\``;
}

function otherHint(token: Token): string | undefined {
  if (token.text === '#') return 'a comment needs a blank before its `#`';
  if (token.text === "'" || token.text === '“' || token.text === '”')
    return 'texts stand in straight double quotes: "…"';
  if (token.text === '=') return 'only `let` and the changes of a variant have a `=`';
  if (token.text === ':') return 'no colon belongs behind a word';
  if (token.text === ',') return 'two facts on one line are joined by `;`';
  return undefined;
}

export function meant(word: string, known: Iterable<string>): string | undefined {
  const near = didYouMean(word, known);
  return near === undefined ? undefined : `did you mean \`${near}\`?`;
}
