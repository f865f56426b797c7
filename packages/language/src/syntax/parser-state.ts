import type { Problem } from '../model/problem.js';
import type { Expectation } from '../symbols/context.js';
import { type Advice, didYouMeanAdvice, type Hint, hintFields } from '../text/advice.js';
import { didYouMean } from '../text/did-you-mean.js';
import { everydayWord } from './everyday-words.js';
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
  /** Words that could have stood at a token and did not: parts of a line that may be left out. */
  readonly passed: { readonly index: number; readonly words: readonly string[] }[];
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

export function report(state: ParserState, id: string, span: Span, message: string, hint?: Hint): void {
  state.problems.push({
    id,
    severity: 'error',
    message,
    range: { file: state.file, from: span.from, to: span.to },
    ...hintFields(hint),
  });
}

/** Notes the words of a part that was left out; only those of the last two tokens are ever asked for. */
export function passOver(state: ParserState, words: readonly string[]): void {
  const { passed, index } = state;
  const last = passed.at(-1);
  if (last?.index === index) passed[passed.length - 1] = { index, words: [...last.words, ...words] };
  else passed.push({ index, words });
  if (passed.length > 2) passed.shift();
}

/** The words that could also have stood at a token, the next one unless said. */
export function wordsPassed({ passed, index }: ParserState, ahead = 0): readonly string[] {
  return passed.find((entry) => entry.index === index + ahead)?.words ?? [];
}

/**
 * A misspelt word where one could be left out, as in `fan up 10 L/s`, is taken for the name of a value, and the line breaks
 * behind it; the complaint belongs to the word.
 */
function failAtPassed(state: ParserState): void {
  const word = previous(state);
  const words = wordsPassed(state, -1);
  if (words.length === 0 || word?.kind !== 'word') return;
  const list = words.map((other) => `\`${other}\``).join(', ');
  report(state, 'unknown-word', word, `expected ${list} or a value, found \`${word.text}\``, meant(word.text, words));
  throw new BrokenLine();
}

/** The token before the next one, with its number where it is a unit: `400 mm`. */
function lastPiece(state: ParserState): string {
  const before = previous(state)!;
  const number = state.tokens[state.index - 2];
  const from = before.kind === 'word' && number?.kind === 'number' ? number.from : before.from;
  return state.text.slice(from, before.to);
}

/** Complains at the next token, or at the end of the line's last token when nothing follows, and gives the line up. */
export function fail(state: ParserState, id: string, expected: string, hint?: Hint): never {
  const token = peek(state);
  const before = previous(state);
  const atEnd = endsFact(token) || isSymbol(token, '{');
  if (!atEnd) failAtPassed(state);
  const also = atEnd || token.kind === 'string' ? [] : wordsPassed(state);
  if (also.length > 0) {
    const list = also.map((word) => `\`${word}\``).join(', ');
    const joint = expected.includes(' or ') ? ', ' : ' or ';
    const message = `expected ${list}${joint}${expected}, found ${describe(token)}`;
    report(state, id, token, message, meant(token.text, also) ?? otherHint(token) ?? hint);
    throw new BrokenLine();
  }
  if (atEnd && before && before.kind !== 'newline')
    report(state, id, before, `expected ${expected} after \`${lastPiece(state)}\``, hint);
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

function otherHint(token: Token): Hint | undefined {
  if (token.text === '#') return { hint: 'a comment needs a blank before its `#`', instead: [' #'] };
  if (token.text === "'" || token.text === '“' || token.text === '”')
    return 'texts stand in straight double quotes: "…"';
  if (token.text === '–' || token.text === '—' || token.text === '!') return 'a note starts with `#`';
  if (token.text === '=') return 'only `let` and the changes of a variant have a `=`';
  if (token.text === ':') return { hint: 'no colon belongs behind a word', instead: [''] };
  if (token.text === ',') return { hint: 'two facts on one line are joined by `;`', instead: [';'] };
  return undefined;
}

export function meant(word: string, known: Iterable<string>): Advice | undefined {
  const options = [...known];
  const near = everydayWord(word, options) ?? didYouMean(word, options);
  return near === undefined ? undefined : didYouMeanAdvice(near);
}
