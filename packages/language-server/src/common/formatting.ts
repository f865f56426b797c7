import type { Range, TextEdit } from 'vscode-languageserver';
import { type FormatEdit, formatEdits } from './format-edits.js';
import type { View } from './view.js';

/** Brings the whole text into its one layout. */
export function formatting(view: View): TextEdit[] {
  return formatEdits(view).map((edit) => textEdit(view, edit));
}

/** Brings the lines of a range into the layout that they have in the whole text, and touches no other line. */
export function rangeFormatting(view: View, { start, end }: Range): TextEdit[] {
  const from = view.lines.offsetAt({ line: start.line, character: 0 });
  // A selection of whole lines ends at the start of the line behind them.
  const isBehind = end.character === 0 && end.line > start.line;
  const to = isBehind ? view.lines.offsetAt(end) : view.lines.lineEnd(view.lines.offsetAt(end));
  return formatEdits(view)
    .filter((edit) => from <= edit.from && edit.to <= to)
    .map((edit) => textEdit(view, edit));
}

export function textEdit(view: View, { from, to, newText }: FormatEdit): TextEdit {
  return { range: view.lines.rangeOf({ from, to }), newText };
}
