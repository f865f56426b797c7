/** A box on the drawing, px, y downwards. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export const fontSize = 11;
/** From one line of text to the next. */
export const lineHeight = 14;
/** Of a line of text above and below its base line. */
export const ascent = 10;
export const descent = 3;

/** Width of a text, px, as wide as the widest of the usual sans-serif fonts sets it, so that it never runs over. */
export function textWidth(text: string, bold = false): number {
  let ems = 0;
  for (const letter of text) ems += letterWidth(letter);
  return ems * fontSize * (bold ? 1.12 : 1);
}

function letterWidth(letter: string): number {
  if (/[ \u00a0.,:;'′!|iIjl]/.test(letter)) return 0.36;
  if (/[()[\]{}ftrJ/\\"″-]/.test(letter)) return 0.48;
  if (/[mwMW@%–—→…×]/.test(letter)) return 1;
  if (/[A-Z&+=<>~#]/.test(letter)) return 0.84;
  return letter.codePointAt(0)! < 0x250 ? 0.65 : 1.1;
}

/** The text, or as much of it as is no wider than `room`, with an ellipsis. */
export function shortened(text: string, room: number, bold = false): string {
  if (textWidth(text, bold) <= room) return text;
  let kept = '';
  for (const letter of text) {
    if (textWidth(`${kept}${letter}…`, bold) > room) break;
    kept += letter;
  }
  return `${kept.trimEnd()}…`;
}

/** Lines no wider than `room`; a single word that is wider is shortened. */
export function wrapped(text: string, room: number): string[] {
  const lines: string[] = [];
  // A figure and its unit stay together.
  const glued = text
    .replace(/([\d%′)]) (?=(mm|kg|L\/s|×|\d+″|\d+ \d+\/|\d+\/)(?![a-z]))/g, '$1\u00a0')
    .replace(/ ?× /g, '\u00a0×\u00a0');
  for (const word of glued.split(' ')) {
    const last = lines[lines.length - 1];
    const longer = last === undefined ? word : `${last} ${word}`;
    if (last === undefined || textWidth(longer) > room) lines.push(shortened(word, room));
    else lines[lines.length - 1] = longer;
  }
  return lines;
}

export function overlaps(one: Box, other: Box): boolean {
  return (
    Math.min(one.right, other.right) - Math.max(one.left, other.left) > 0 &&
    Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top) > 0
  );
}

export function union(boxes: readonly Box[]): Box {
  return {
    left: Math.min(...boxes.map(({ left }) => left)),
    top: Math.min(...boxes.map(({ top }) => top)),
    right: Math.max(...boxes.map(({ right }) => right)),
    bottom: Math.max(...boxes.map(({ bottom }) => bottom)),
  };
}
