import { displayWidth } from './display-width.js';

/** Blanks between a figure and what belongs to it, which must not end a line: `112 Hz`, `4.2 min`, `6 dB`. */
const bound =
  /(?<=\d) (?=(?:k?Hz|dBA?|dBFS|ppm|min|h|s|k?Pa|k?g|kg\/m[²³]|[mckμ]?m|m[²³]|L\/[sh]|%|EUR|points?)(?:[\s.,;:)]|$))/g;

/** Words of `text` in lines of at most `width` columns; the first line starts with `first`, the others with `rest`. */
export function wrapText(text: string, width: number, first = '', rest = first): string {
  const lines: string[] = [];
  let line = first;
  let used = displayWidth(first);
  let empty = true;
  for (const word of text
    .replace(bound, '\u00a0')
    .split(/[ \n]+/)
    .filter(Boolean)) {
    const size = displayWidth(word);
    if (!empty && used + 1 + size > width) {
      lines.push(line);
      line = rest;
      used = displayWidth(rest);
      empty = true;
    }
    line += empty ? word : ` ${word}`;
    used += empty ? size : size + 1;
    empty = false;
  }
  lines.push(line);
  return lines.map((entry) => entry.replaceAll('\u00a0', ' ').trimEnd()).join('\n');
}
