/** One stretch of a text and what comes in its place. */
export interface TextChange {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

/** The text with all changes made; they must not overlap. */
export function withChanges(text: string, changes: readonly TextChange[]): string {
  let result = text;
  for (const { from, to, text: put } of inOrder(changes).reverse()) {
    result = result.slice(0, from) + put + result.slice(to);
  }
  return result;
}

/** Where the texts that were put in stand once all changes are made. */
export function placesAfter(changes: readonly TextChange[]): readonly { readonly from: number; readonly to: number }[] {
  let moved = 0;
  return inOrder(changes).map(({ from, to, text }) => {
    const start = from + moved;
    moved += text.length - (to - from);
    return { from: start, to: start + text.length };
  });
}

function inOrder(changes: readonly TextChange[]): TextChange[] {
  return [...changes].sort((a, b) => a.from - b.from || a.to - b.to);
}
