export interface TextPlace {
  /** From 1. */
  readonly line: number;
  /** From 1, in UTF-16 units as editors count them. */
  readonly column: number;
  readonly lineFrom: number;
  /** Without the line end. */
  readonly lineTo: number;
}

/** Where the lines of a text start; made once for many look-ups. */
export type LineStarts = readonly number[];

/** Lines end with LF, CRLF or CR. */
export function lineStarts(text: string): LineStarts {
  const starts = [0];
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (code === 10 || (code === 13 && text.charCodeAt(at + 1) !== 10)) starts.push(at + 1);
  }
  return starts;
}

/** Line and column of an offset; an offset past the end is the end. */
export function lineAndColumn(text: string, offset: number, starts: LineStarts = lineStarts(text)): TextPlace {
  const at = Math.max(0, Math.min(offset, text.length));
  let low = 0;
  let high = starts.length - 1;
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if ((starts[middle] ?? 0) <= at) low = middle;
    else high = middle - 1;
  }
  const lineFrom = starts[low] ?? 0;
  let lineTo = starts[low + 1] ?? text.length;
  while (lineTo > lineFrom && /[\r\n]/.test(text[lineTo - 1] ?? '')) lineTo -= 1;
  return { line: low + 1, column: Math.min(at, lineTo) - lineFrom + 1, lineFrom, lineTo };
}
