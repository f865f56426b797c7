import type { Problem } from '@boothwright/language';
import type { View } from '../view.js';
import type { Candidate } from './candidate.js';

/** A comma that is missing between two pieces of a list, and a range written from its end. */
export function orderAndCommas(view: View, { id, range, related = [] }: Problem): Candidate[] {
  const { text } = view;
  if (id === 'comma-missing') {
    const at = text.slice(0, range.from).trimEnd().length;
    return [{ title: 'Put the comma in', changes: [{ from: at, to: at, text: ',' }] }];
  }
  const start = related[0]?.range;
  if (id !== 'range-turned-round' || start === undefined || start.file !== view.file) return [];
  const [low, high] = [text.slice(start.from, start.to), text.slice(range.from, range.to)];
  return [
    {
      title: `Swap \`${low}\` and \`${high}\``,
      changes: [
        { from: start.from, to: start.to, text: high },
        { from: range.from, to: range.to, text: low },
      ],
    },
  ];
}
