export interface TextPlace {
  /** From 1. */
  readonly line: number;
  /** From 1, in UTF-16 units as editors count them. */
  readonly column: number;
  readonly lineFrom: number;
  /** Without the line end. */
  readonly lineTo: number;
}

/** Line and column of an offset; lines end with LF, CRLF or CR. An offset past the end is the end. */
export function lineAndColumn(text: string, offset: number): TextPlace {
  const at = Math.max(0, Math.min(offset, text.length));
  let line = 1;
  let lineFrom = 0;
  for (const match of text.matchAll(/\r\n|\n|\r/g)) {
    const next = match.index + match[0].length;
    if (next > at) return { line, column: Math.min(at, match.index) - lineFrom + 1, lineFrom, lineTo: match.index };
    line += 1;
    lineFrom = next;
  }
  return { line, column: at - lineFrom + 1, lineFrom, lineTo: text.length };
}
