import { format } from '@boothwright/language';
import type { TextEdit } from 'vscode-languageserver';
import type { View } from './view.js';

/** One edit from the first to the last character that changes, so that the editor keeps cursors and marks elsewhere. */
export function formatting(view: View): TextEdit[] {
  const before = view.text;
  const after = format(before);
  if (after === before) return [];
  let start = 0;
  const shorter = Math.min(before.length, after.length);
  while (start < shorter && before[start] === after[start]) start++;
  let tail = 0;
  while (tail < shorter - start && before[before.length - 1 - tail] === after[after.length - 1 - tail]) tail++;
  return [
    {
      range: view.lines.rangeOf({ from: start, to: before.length - tail }),
      newText: after.slice(start, after.length - tail),
    },
  ];
}
