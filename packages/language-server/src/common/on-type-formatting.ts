import type { FormattingOptions, Position, TextEdit } from 'vscode-languageserver';
import { formatEdits } from './format-edits.js';
import { textEdit } from './formatting.js';
import type { View } from './view.js';

/** What sets it off: the end of a line, and the end of a block. */
export const typedCharacters = { first: '\n', more: ['}'] } as const;

/**
 * Tidies what was just finished and never what is being typed. A line break tidies the line above, with its neighbours
 * down from the last empty line since their values stand in a column; a `}` tidies its own line.
 */
export function onTypeFormatting(
  view: View,
  position: Position,
  typed: string,
  options: FormattingOptions,
): TextEdit[] {
  if (typed === '}') return between(view, position.line, position);
  if (position.line === 0) return [];
  let first = position.line - 1;
  while (first > 0 && lineText(view, first - 1).trim() !== '') first--;
  const above = position.line - 1;
  const end = { line: above, character: lineText(view, above).length };
  return [...between(view, first, end), ...indent(view, position, options)];
}

function between(view: View, firstLine: number, end: Position): TextEdit[] {
  const from = view.lines.offsetAt({ line: firstLine, character: 0 });
  const to = view.lines.offsetAt(end);
  return formatEdits(view)
    .filter((edit) => from <= edit.from && edit.to <= to)
    .map((edit) => textEdit(view, edit));
}

function lineText(view: View, line: number): string {
  const from = view.lines.offsetAt({ line, character: 0 });
  return view.text.slice(from, view.lines.lineEnd(from));
}

/** An empty new line starts where its block's lines start. */
function indent(view: View, { line }: Position, { tabSize, insertSpaces }: FormattingOptions): TextEdit[] {
  const present = lineText(view, line);
  if (present.trim() !== '') return [];
  const at = view.lines.offsetAt({ line, character: 0 });
  let depth = 0;
  for (const { kind, text, from } of view.parsed.tokens) {
    if (from >= at) break;
    if (kind !== 'symbol') continue;
    if (text === '{') depth++;
    else if (text === '}') depth = Math.max(0, depth - 1);
  }
  const wanted = (insertSpaces ? ' '.repeat(tabSize) : '\t').repeat(depth);
  if (present === wanted) return [];
  return [{ range: view.lines.rangeOf({ from: at, to: at + present.length }), newText: wanted }];
}
