import fs from 'node:fs';
import { afterEach, describe, expect, test } from 'vitest';
import { largestFile, readText } from '../src/read-text.js';
import { fakeTerminal } from './fake-terminal.js';

let scene: ReturnType<typeof fakeTerminal> | undefined;
afterEach(() => scene?.remove());

function read(content: string | Buffer) {
  scene = fakeTerminal({ 'a.booth': content });
  return readText(scene.path('a.booth'), 'a.booth');
}

describe('readText(path, place)', () => {
  test('reads UTF-8 text as it is', () => {
    expect(read('let a = 1 mm # ±\r\n')).toEqual({ kind: 'text', text: 'let a = 1 mm # ±\r\n', byteOrderMark: false });
  });

  test('takes a byte order mark off and says so', () => {
    expect(read('\ufefflet')).toEqual({ kind: 'text', text: 'let', byteOrderMark: true });
  });

  test('accepts the replacement character when the text itself holds it', () => {
    expect(read('# \ufffd')).toMatchObject({ kind: 'text' });
  });

  test.each([
    ['a zero byte', Buffer.from('let a\n= \0', 'latin1'), 'not-text', 'a.booth:2:3'],
    ['a byte that is no UTF-8', Buffer.from('let a\xff = 1', 'latin1'), 'not-utf-8', 'a.booth:1:6'],
    ['half a character at the end', Buffer.from([0x61, 0xe2, 0x82]), 'not-utf-8', 'a.booth:1:2'],
    ['UTF-16', Buffer.from('\ufefflet', 'utf16le'), 'not-utf-8', 'a.booth:1:1'],
  ])('refuses %s and points at it', (_, content, id, place) => {
    expect(read(content)).toMatchObject({ kind: 'complaint', complaint: { id, place } });
  });

  test('refuses a file above the limit and reads one at the limit', () => {
    expect(read(Buffer.alloc(largestFile + 1, 32))).toMatchObject({
      kind: 'complaint',
      complaint: { id: 'file-too-large' },
    });
    scene?.remove();
    expect(read(Buffer.alloc(largestFile, 32))).toMatchObject({ kind: 'text' });
  });

  test('refuses a folder, a missing file and a file below a file', () => {
    scene = fakeTerminal({ 'folder/a.booth': '' });
    const id = (name: string) => {
      const answer = readText(scene!.path(name), name);
      return answer.kind === 'complaint' && answer.complaint.id;
    };
    expect([id('folder'), id('nowhere.booth'), id('folder/a.booth/b')]).toEqual([
      'folder-not-file',
      'missing-file',
      'missing-file',
    ]);
  });

  test('refuses a device instead of reading it without end', () => {
    expect(readText('/dev/zero', '/dev/zero')).toMatchObject({ complaint: { id: 'not-a-regular-file' } });
  });

  test('says so when the system does not let the file be read', () => {
    scene = fakeTerminal();
    fs.symlinkSync('a.booth', scene.path('a.booth'));
    expect(readText(scene.path('a.booth'), 'a.booth')).toMatchObject({
      complaint: { id: 'unreadable-file', message: 'the file cannot be read (ELOOP)' },
    });
  });
});
