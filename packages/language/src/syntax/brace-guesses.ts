import { limits } from '../limits.js';
import type { BlockName } from '../vocabulary/shape.js';
import { blockOf, overrideFact } from '../vocabulary/vocabulary.js';
import { factsStartingWith } from './facts-starting-with.js';
import { isSymbol, isWord, type ParserState, peek, previous } from './parser-state.js';

/** The open blocks from the file to the innermost one. */
export type Open = readonly BlockName[];

/** True when the words `let NAME =` come next. */
export function startsLet(state: ParserState): boolean {
  return isWord(peek(state), 'let') && peek(state, 1).kind === 'word' && isSymbol(peek(state, 2), '=');
}

/** Which braces of a block were forgotten although its facts follow; that has been complained about. */
export type Braceless = 'opening' | 'both' | undefined;

/** At the end of a header: its `{` was forgotten when a `}` too many, or a fact that only its block has, follows. */
export function forgottenBraces(state: ParserState, block: BlockName, open: Open): Braceless {
  if (peek(state).kind !== 'newline' || open.length > limits.blockDepth) return undefined;
  // Beyond what is told, no guess is worth its cost.
  if (state.problems.length > limits.problems) return undefined;
  if (bracesAhead(state) >= open.length) return 'opening';
  const first = peek(state, 1);
  if (open.length > 1 || first.kind !== 'word' || factsStartingWith('file', first.text).length > 0) return undefined;
  const isLayer = hasLayers(block) && peek(state, 2).kind === 'number';
  return isLayer || factsStartingWith(block, first.text).length > 0 ? 'both' : undefined;
}

/** True for a block whose lines may start with any name, such as that of a material. */
function hasLayers(block: BlockName): boolean {
  return blockOf(block).facts.some((fact) => fact.keyword === '' && fact !== overrideFact);
}

/** True when a `let` stands in a block that is closed further on, so that it is the `let` that is out of place. */
export function isStray(state: ParserState, open: Open): boolean {
  if (previous(state)?.kind !== 'newline' || state.strays.length >= limits.related) return true;
  return bracesAhead(state, true) >= open.length - 1;
}

/** A line start that can only be a declaration of the file. */
export function startsTopLevel(state: Pick<ParserState, 'tokens'>, index: number): boolean {
  const token = state.tokens[index]!;
  if (token.kind !== 'word' || (index > 0 && state.tokens[index - 1]!.kind !== 'newline')) return false;
  const facts = factsStartingWith('file', token.text);
  if (facts.length === 0) return false;
  const after = state.tokens[index + 1]!;
  return after.kind === 'word' || after.kind === 'string' || isSymbol(after, '{');
}

/**
 * True when the line belongs to a block around the innermost one, so that the innermost was never closed: it starts a
 * block or declaration of an outer block, or it is a fact or a layer of an outer one and a `}` is missing further on.
 */
export function belongsOutside(state: ParserState, open: Open): boolean {
  const token = peek(state);
  const name = open.at(-1)!;
  if (token.kind !== 'word' || previous(state)?.kind !== 'newline' || factsStartingWith(name, token.text).length > 0)
    return false;
  const outer = open.slice(0, -1).findLast((candidate) => factsStartingWith(candidate, token.text).length > 0);
  const after = peek(state, 1);
  if (outer === undefined) {
    const isLayer = after.kind === 'number' && open.slice(0, -1).some(hasLayers);
    return isLayer && !hasLayers(name) && bracesAhead(state) < open.length - 1;
  }
  if (outer === 'file') return startsTopLevel(state, state.index);
  const fact = factsStartingWith(outer, token.text)[0]!;
  if (fact.block) return after.kind === 'word' || after.kind === 'string';
  if (blockOf(name).facts.some((candidate) => candidate.keyword === '')) return false;
  return bracesAhead(state) < open.length - 1;
}

/** Guesses about braces look only so far, so that no text makes them dear. */
function lookahead(state: ParserState): number {
  return Math.min(state.tokens.length, state.index + limits.lookahead);
}

/** How many blocks that are open now are closed before the next declaration of the file. */
function bracesAhead(state: ParserState, pastLets = false): number {
  let depth = 0;
  let closed = 0;
  for (let i = state.index; i < lookahead(state); i++) {
    const token = state.tokens[i]!;
    if (isSymbol(token, '{')) depth++;
    else if (isSymbol(token, '}')) {
      if (depth > 0) depth--;
      else closed++;
    } else if (depth === 0 && i > state.index && startsTopLevel(state, i)) {
      if (!pastLets || state.tokens[i]!.text !== 'let') break;
    }
  }
  return closed;
}

/** True when facts and another `}` follow before the next declaration of the file. */
export function closesTooEarly(state: ParserState): boolean {
  let depth = 0;
  let content = false;
  for (let i = state.index + 1; i < lookahead(state); i++) {
    const token = state.tokens[i]!;
    if (startsTopLevel(state, i)) return false;
    if (isSymbol(token, '{')) depth++;
    else if (isSymbol(token, '}') && --depth < 0) return content;
    else if (token.kind === 'word') content = true;
  }
  return false;
}
