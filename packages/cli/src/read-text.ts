import fs from 'node:fs';
import type { Complaint } from './complaint.js';

/** Far above any booth; a file that is larger was named by mistake. */
export const largestFile = 2_000_000;

export type ReadText =
  | { readonly kind: 'text'; readonly text: string; readonly byteOrderMark: boolean }
  | { readonly kind: 'complaint'; readonly missing: boolean; readonly complaint: Complaint };

/** Reads a specification; refuses what is no regular file of text. `place` is how the user names it. */
export function readText(path: string, place: string): ReadText {
  const refuse = (id: string, message: string, help?: string): ReadText => ({
    kind: 'complaint',
    missing: id === 'missing-file',
    complaint: { id, place, message, help },
  });
  let bytes: Buffer;
  try {
    const found = fs.statSync(path);
    if (found.isDirectory())
      return refuse('folder-not-file', 'this is a folder, expected a file', 'name the specification inside it');
    if (!found.isFile())
      return refuse(
        'not-a-regular-file',
        'this is a device or a pipe, expected a file',
        'save the text to a file first',
      );
    if (found.size > largestFile) {
      const size = (found.size / 1e6).toFixed(1);
      return refuse(
        'file-too-large',
        `the file has ${size} MB, expected at most ${largestFile / 1e6} MB of text`,
        'check that this is the specification; split a large one with `use`',
      );
    }
    bytes = fs.readFileSync(path);
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code ?? 'unknown reason';
    if (code === 'ENOENT' || code === 'ENOTDIR')
      return refuse('missing-file', 'there is no such file, expected a specification to read');
    if (code === 'EACCES' || code === 'EPERM')
      return refuse('unreadable-file', 'the file may not be read', 'check the permissions of the file');
    return refuse('unreadable-file', `the file cannot be read (${code})`);
  }
  return textOf(bytes, place);
}

/** The text of a file that was read, wherever it came from; refuses what is no UTF-8. */
export function textOf(bytes: Buffer, place: string): ReadText {
  const refuse = (id: string, message: string, help: string, at: string): ReadText => ({
    kind: 'complaint',
    missing: false,
    complaint: { id, place: at, message, help },
  });
  const wide = (bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff);
  if (wide) return refuse('not-utf-8', 'the text is UTF-16, expected UTF-8', 'save the file as UTF-8', `${place}:1:1`);
  const bad = firstBadByte(bytes);
  if (bad !== undefined) {
    const before = bytes
      .subarray(0, bad)
      .toString('latin1')
      .split(/\r\n|\n|\r/);
    const at = `${place}:${before.length}:${(before.at(-1)?.length ?? 0) + 1}`;
    return bytes[bad] === 0
      ? refuse('not-text', 'this is no text: found a zero byte, expected UTF-8', 'name the `.booth` text itself', at)
      : refuse(
          'not-utf-8',
          `found the byte 0x${(bytes[bad] ?? 0).toString(16).padStart(2, '0')}, expected UTF-8`,
          'save the file as UTF-8',
          at,
        );
  }
  const text = bytes.toString('utf8');
  const byteOrderMark = text.startsWith('\ufeff');
  return { kind: 'text', text: byteOrderMark ? text.slice(1) : text, byteOrderMark };
}

/** Offset of the first byte that is zero or no UTF-8. */
function firstBadByte(bytes: Buffer): number | undefined {
  const zero = bytes.indexOf(0);
  // Bytes that are no UTF-8 decode to U+FFFD; where the text itself holds that character, it encodes to the same bytes.
  const again = Buffer.from(bytes.toString('utf8'), 'utf8');
  const length = Math.min(bytes.length, again.length);
  let wrong: number | undefined;
  if (!bytes.equals(again)) {
    wrong = length;
    for (let at = 0; at < length; at++)
      if (bytes[at] !== again[at]) {
        wrong = at;
        break;
      }
  }
  if (zero < 0) return wrong;
  return wrong === undefined ? zero : Math.min(zero, wrong);
}
