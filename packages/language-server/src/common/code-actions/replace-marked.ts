import type { Problem } from '@boothwright/language';
import type { View } from '../view.js';
import type { Candidate } from './candidate.js';

/** Hints that are one of several ways out: what else could be changed is as likely meant. */
const severalWaysOut: ReadonlySet<string> = new Set(['dimensions-disagree', 'opening-larger-than-inside']);

/** What the language itself says can stand in place of the marked text: near names, words and units, other signs. */
export function replaceMarked(view: View, { id, range, instead = [] }: Problem): Candidate[] {
  const marked = view.text.slice(range.from, range.to);
  return instead
    .filter((text) => text !== marked)
    .map((text) => ({
      title: titleOf(marked, text),
      changes: [text === '' ? withoutBlank(view.text, range) : { from: range.from, to: range.to, text }],
      ...(severalWaysOut.has(id) || marked.includes('$') ? { oneOfSeveral: true } : {}),
    }));
}

function titleOf(marked: string, text: string): string {
  if (text === '') return `Remove \`${marked}\``;
  if (text.trim() === marked)
    return text.endsWith(' ') ? `Put blanks around \`${marked}\`` : `Put a blank before \`${marked}\``;
  return `Replace \`${short(marked)}\` by \`${text}\``;
}

/** A sign that goes takes its line with it where nothing else stands there. */
function withoutBlank(text: string, { from, to }: Problem['range']) {
  const start = text.lastIndexOf('\n', from - 1) + 1;
  const end = text.indexOf('\n', to);
  const isAlone = text.slice(start, from).trim() === '' && end >= 0 && text.slice(to, end).trim() === '';
  return isAlone ? { from: start, to: end + 1, text: '' } : { from, to, text: '' };
}

function short(text: string): string {
  return text.length > 40 ? `${text.slice(0, 40)}…` : text;
}
