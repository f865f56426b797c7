/** A small text with the places that a test is about. */
export interface MarkedText {
  /** Without the marks. */
  readonly text: string;
  /** Where a `<|>` stood. */
  readonly cursors: readonly number[];
  /** What stood between `<|` and `|>`. */
  readonly ranges: readonly { readonly from: number; readonly to: number }[];
}

/** Takes the marks out of a text: `<|>` is a cursor, `<|name|>` a range. */
export function markedText(marked: string): MarkedText {
  const cursors: number[] = [];
  const ranges: { from: number; to: number }[] = [];
  const starts: number[] = [];
  let text = '';
  let at = 0;
  for (const { 0: mark, index } of marked.matchAll(/<\|>|<\||\|>/g)) {
    text += marked.slice(at, index);
    at = index + mark.length;
    if (mark === '<|>') cursors.push(text.length);
    else if (mark === '<|') starts.push(text.length);
    else {
      const from = starts.pop();
      if (from === undefined) throw new Error('`|>` without `<|` before it');
      ranges.push({ from, to: text.length });
    }
  }
  if (starts.length > 0) throw new Error('`<|` without `|>` behind it');
  return { text: text + marked.slice(at), cursors, ranges };
}
