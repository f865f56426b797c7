import { format, parse, type Token } from '@boothwright/language';
import type { View } from './view.js';

/** One stretch between two tokens that formatting writes anew. */
export interface FormatEdit {
  readonly from: number;
  readonly to: number;
  readonly newText: string;
}

/**
 * What formatting changes, as the blanks between tokens: nothing else ever changes, so that the editor keeps cursors
 * and marks, and any part of the text can be formatted by itself.
 */
export function formatEdits({ text, parsed }: Pick<View, 'text' | 'parsed'>): FormatEdit[] {
  const after = format(text);
  if (after === text) return [];
  const olds = solid(parsed.tokens);
  const news = solid(parse(after, '').tokens);
  const isSame = olds.length === news.length && olds.every((token, i) => written(token) === written(news[i]!));
  if (!isSame) return [{ from: 0, to: text.length, newText: after }];
  const edits: FormatEdit[] = [];
  let from = 0;
  let newFrom = 0;
  const compare = (to: number, newTo: number): void => {
    const newText = after.slice(newFrom, newTo);
    const before = text.slice(from, to);
    if (before !== newText) edits.push(...lineEdits(from, before, newText));
  };
  olds.forEach((token, i) => {
    compare(token.from, news[i]!.from);
    from = token.from + written(token).length;
    newFrom = news[i]!.from + written(token).length;
  });
  compare(text.length, after.length);
  return edits;
}

const solid = (tokens: readonly Token[]): readonly Token[] => tokens.filter(({ kind }) => kind !== 'newline');

/** A comment without the blanks at its end, which formatting takes away. */
const written = ({ kind, text }: Token): string => (kind === 'comment' ? text.trimEnd() : text);

/** The end of the line above and the start of the line below are changed apart, so that each can be had alone. */
function lineEdits(from: number, before: string, after: string): FormatEdit[] {
  const breakAt = before.lastIndexOf('\n') + 1;
  const newBreakAt = after.lastIndexOf('\n') + 1;
  if (breakAt === 0 || newBreakAt === 0) return [{ from, to: from + before.length, newText: after }];
  const edits: FormatEdit[] = [];
  if (before.slice(0, breakAt) !== after.slice(0, newBreakAt))
    edits.push({ from, to: from + breakAt, newText: after.slice(0, newBreakAt) });
  if (before.slice(breakAt) !== after.slice(newBreakAt))
    edits.push({ from: from + breakAt, to: from + before.length, newText: after.slice(newBreakAt) });
  return edits;
}
