/** A colour sequence as `paint` writes it: escape, `[`, figures, `m`. */
const painted = new RegExp(`${String.fromCharCode(27)}\\[[0-9;]*m`, 'g');

export function withoutColour(text: string): string {
  return text.replace(painted, '');
}

/** Columns that a text takes in a terminal; combining marks take none, wide East Asian characters and pictures two. */
export function displayWidth(text: string): number {
  let width = 0;
  for (const character of withoutColour(text)) {
    if (/\p{Mn}|\p{Me}|\p{Cf}/u.test(character)) continue;
    width += isWide(character.codePointAt(0) ?? 0) ? 2 : 1;
  }
  return width;
}

function isWide(code: number): boolean {
  return (
    (code >= 0x1100 && code <= 0x115f) ||
    (code >= 0x2e80 && code <= 0xa4cf) ||
    (code >= 0xac00 && code <= 0xd7a3) ||
    (code >= 0xf900 && code <= 0xfaff) ||
    (code >= 0xfe30 && code <= 0xfe6f) ||
    (code >= 0xff00 && code <= 0xff60) ||
    (code >= 0xffe0 && code <= 0xffe6) ||
    (code >= 0x1f300 && code <= 0x1faff) ||
    (code >= 0x20000 && code <= 0x3fffd)
  );
}
