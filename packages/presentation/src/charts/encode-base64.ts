const alphabet = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';

function utf8(text: string): number[] {
  const bytes: number[] = [];
  for (const character of text) {
    let code = character.codePointAt(0) ?? 0;
    // A lone surrogate has no UTF-8 form; the replacement character stands in for it.
    if (code >= 0xd800 && code <= 0xdfff) code = 0xfffd;
    if (code < 0x80) bytes.push(code);
    else if (code < 0x800) bytes.push(0xc0 | (code >> 6), 0x80 | (code & 63));
    else if (code < 0x10000) bytes.push(0xe0 | (code >> 12), 0x80 | ((code >> 6) & 63), 0x80 | (code & 63));
    else bytes.push(0xf0 | (code >> 18), 0x80 | ((code >> 12) & 63), 0x80 | ((code >> 6) & 63), 0x80 | (code & 63));
  }
  return bytes;
}

/** Base64 of the UTF-8 bytes of a text, by RFC 4648. Needs neither Node nor a browser. */
export function encodeBase64(text: string): string {
  const bytes = utf8(text);
  let out = '';
  for (let at = 0; at < bytes.length; at += 3) {
    const [a = 0, b, c] = [bytes[at], bytes[at + 1], bytes[at + 2]];
    out += alphabet[a >> 2];
    out += alphabet[((a & 3) << 4) | ((b ?? 0) >> 4)];
    out += b === undefined ? '=' : alphabet[((b & 15) << 2) | ((c ?? 0) >> 6)];
    out += c === undefined ? '=' : alphabet[c & 63];
  }
  return out;
}
