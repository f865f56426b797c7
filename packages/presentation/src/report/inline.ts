import { printable } from '../text/printable.js';

export interface Inline {
  readonly text: string;
  readonly code: boolean;
}

/** Text cut at its backticks: what stands between two of them is code. A backtick without its partner stays a letter. */
export function inlines(words: string): readonly Inline[] {
  const clean = printable(words.replace(/[\r\n]+/g, ' '));
  const parts: Inline[] = [];
  let at = 0;
  for (const match of clean.matchAll(/`([^`]+)`/g)) {
    if (match.index > at) parts.push({ text: clean.slice(at, match.index), code: false });
    parts.push({ text: match[1] ?? '', code: true });
    at = match.index + match[0].length;
  }
  if (at < clean.length) parts.push({ text: clean.slice(at), code: false });
  return parts;
}
