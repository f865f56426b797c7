/**
 * Text of a specification as a terminal may show it: control characters, which could move the cursor or change colours,
 * and marks that reverse the reading direction are shown as their code point.
 */
export function printable(text: string): string {
  let out = '';
  for (const character of text) {
    const code = character.codePointAt(0) ?? 0;
    const control = code < 0x20 || (code >= 0x7f && code < 0xa0) || (code >= 0xd800 && code <= 0xdfff);
    const direction = (code >= 0x202a && code <= 0x202e) || (code >= 0x2066 && code <= 0x2069);
    if (character === '\t') out += ' ';
    else out += control || direction ? `<U+${code.toString(16).toUpperCase().padStart(4, '0')}>` : character;
  }
  return out;
}
