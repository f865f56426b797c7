import type { Position, Range } from 'vscode-languageserver';

/** Turns offsets into the protocol's lines and characters and back; both count UTF-16 units. */
export interface LineTable {
  positionAt(offset: number): Position;
  offsetAt(position: Position): number;
  rangeOf(span: { readonly from: number; readonly to: number }): Range;
  /** The end of the line on which an offset lies, without its line break. */
  lineEnd(offset: number): number;
}

export function lineTable(text: string): LineTable {
  const starts = [0];
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    if (code === 13 && text.charCodeAt(i + 1) === 10) continue;
    if (code === 10 || code === 13) starts.push(i + 1);
  }
  const lineOf = (offset: number): number => {
    let low = 0;
    let high = starts.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (starts[middle]! <= offset) low = middle;
      else high = middle - 1;
    }
    return low;
  };
  const clamp = (offset: number) => Math.max(0, Math.min(text.length, offset));
  const endOfLine = (line: number): number => {
    let end = line + 1 < starts.length ? starts[line + 1]! : text.length;
    while (end > starts[line]! && (text[end - 1] === '\n' || text[end - 1] === '\r')) end--;
    return end;
  };
  const positionAt = (offset: number): Position => {
    const at = clamp(offset);
    const line = lineOf(at);
    return { line, character: at - starts[line]! };
  };
  return {
    positionAt,
    offsetAt({ line, character }) {
      if (line < 0) return 0;
      if (line >= starts.length) return text.length;
      return Math.min(starts[line]! + Math.max(0, character), endOfLine(line));
    },
    rangeOf: ({ from, to }) => ({ start: positionAt(from), end: positionAt(to) }),
    lineEnd: (offset) => endOfLine(lineOf(clamp(offset))),
  };
}
