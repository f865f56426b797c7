import { parserState } from '../syntax/parse.js';
import { fixedWords, parseParts } from '../syntax/parse-parts.js';
import { BrokenLine, endsFact, fail, peek } from '../syntax/parser-state.js';
import type { Token } from '../syntax/token.js';
import type { Slot, Span, Statement } from '../syntax/tree.js';
import type { Part } from '../vocabulary/shape.js';
import { type CheckContext, rangeIn } from './context.js';

export type Word = Span & { readonly word: string };

/** One change of a variant, `path = value`. */
export interface Override {
  readonly ctx: CheckContext;
  readonly statement: Statement;
  readonly path: readonly Word[];
  readonly tokens: readonly Token[];
}

export function here({ statement }: Override, span: Span): ReturnType<typeof rangeIn> {
  return rangeIn(statement.file, span);
}

/** Reads the right side as the parts say; complaints go where it stands. */
export function parseValue(
  { ctx, statement, tokens }: Override,
  parts: readonly Part[],
  example: string,
): Map<string, Slot> | undefined {
  const end = tokens.at(-1)!.to;
  const text = ctx.texts.get(statement.file) ?? '';
  const state = parserState(text, statement.file, [
    ...tokens,
    { kind: 'newline', from: end, to: end, text: '', spaced: true },
  ]);
  const slots = new Map<string, Slot>();
  try {
    parseParts(state, parts, { slots, words: fixedWords(parts), example });
    if (!endsFact(peek(state))) fail(state, 'unexpected', 'the end of the line or `;`');
    return slots;
  } catch (error) {
    if (!(error instanceof BrokenLine)) throw error;
    for (const problem of state.problems) ctx.problems.push(problem);
    return undefined;
  }
}
