/** A text with one place marked `<|>`. */
export function cursor(marked: string): { readonly text: string; readonly offset: number } {
  const offset = marked.indexOf('<|>');
  if (offset === -1) throw new Error('the text has no mark');
  return { text: marked.slice(0, offset) + marked.slice(offset + 3), offset };
}
