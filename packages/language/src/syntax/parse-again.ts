import { limits } from '../limits.js';
import { startsTopLevel } from './brace-guesses.js';
import { lexBetween } from './lex.js';
import { parse, parserState, refuse } from './parse.js';
import { parseFileStatements } from './parse-block.js';
import type { ParsedFile } from './parsed-file.js';
import type { Token } from './token.js';

/**
 * Like `parse`, for a text that follows another one: declarations before the change, and where the change leaves the length
 * as it was also those behind it, are the same objects as in the earlier tree. A text with a mistake, before or now, is
 * read as a whole: what a mistake costs depends on what stands around it.
 */
export function parseAgain(text: string, before: ParsedFile): ParsedFile {
  if (text === before.text) return before;
  return parseChanged(text, before) ?? parse(text, before.file);
}

function parseChanged(text: string, before: ParsedFile): ParsedFile | undefined {
  if (before.problems.length > 0 || refuse(text, before.file) !== undefined) return undefined;
  const { file } = before;
  const old = before.tree.statements;
  const { start, oldEnd } = difference(before.text, text);
  const first = firstToRead(before, start);
  if (first === undefined) return undefined;
  const last = text.length === before.text.length ? firstBehind(before, oldEnd) : old.length;
  const from = old[first]!.from;
  const to = old[last]?.from ?? text.length;
  const changed = lexBetween(text, from, to);
  if (changed.some(({ kind, text: words }) => kind === 'comment' && words.startsWith('//'))) return undefined;
  const behind = to === text.length ? [] : before.tokens.slice(tokenAt(before.tokens, to));
  const tokens = before.tokens.slice(0, tokenAt(before.tokens, from)).concat(changed, behind);
  // Each line with content has at least one token.
  if (tokens.length > limits.statements) return undefined;
  const state = parserState(text, file, tokens);
  state.index = tokenAt(state.tokens, from);
  const read = parseFileStatements(state, last < old.length ? to : undefined);
  const next = state.tokens[state.index]!;
  if (state.problems.length > 0 || state.strays.length > 0 || (last < old.length && next.from !== to)) return undefined;
  const statements = [...old.slice(0, first), ...read, ...old.slice(last)];
  return { file, text, tokens, tree: { kind: 'file', file, statements, from: 0, to: text.length }, problems: [] };
}

/** The stretch in which two texts differ: its start in both, its end in the older one. */
function difference(old: string, now: string): { readonly start: number; readonly oldEnd: number } {
  const shorter = Math.min(old.length, now.length);
  let start = 0;
  while (start < shorter && old.charCodeAt(start) === now.charCodeAt(start)) start++;
  let tail = 0;
  while (tail < shorter - start && old.charCodeAt(old.length - 1 - tail) === now.charCodeAt(now.length - 1 - tail)) {
    tail++;
  }
  return { start, oldEnd: old.length - tail };
}

/**
 * The declaration from which on a text is read again: one before the change that begins beyond doubt, for a guess about
 * braces looks no further than there.
 */
function firstToRead({ tree, tokens }: ParsedFile, start: number): number | undefined {
  let index = tree.statements.findIndex(({ to }) => to >= start);
  if (index === -1) index = tree.statements.length;
  const code = { tokens };
  for (index--; index >= 0; index--) {
    const at = tokenAt(tokens, tree.statements[index]!.from);
    if (startsTopLevel(code, at) && (at === 0 || tokens[at - 1]!.kind === 'newline')) return index;
  }
  return undefined;
}

/** The first declaration on a line of its own whose line break stands behind the change. */
function firstBehind({ tree, tokens }: ParsedFile, oldEnd: number): number {
  const found = tree.statements.findIndex(({ from }) => {
    if (from <= oldEnd) return false;
    const before = tokens[tokenAt(tokens, from) - 1];
    return before?.kind === 'newline' && before.from >= oldEnd;
  });
  return found === -1 ? tree.statements.length : found;
}

/** Index of the first token from a place on. */
function tokenAt(tokens: readonly Token[], from: number): number {
  let low = 0;
  let high = tokens.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (tokens[middle]!.from < from) low = middle + 1;
    else high = middle;
  }
  return low;
}
