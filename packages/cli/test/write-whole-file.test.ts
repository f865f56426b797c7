import fs from 'node:fs';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { writeWholeFile } from '../src/write-whole-file.js';
import { fakeTerminal } from './fake-terminal.js';

let scene = fakeTerminal();
afterEach(() => {
  vi.restoreAllMocks();
  scene.remove();
});

/** A disk that fills up while the text is written: half of it is there when the error comes. */
function fullDisk(): void {
  const write = fs.writeFileSync;
  vi.spyOn(fs, 'writeFileSync').mockImplementation((file, text, options) => {
    write(file, String(text).slice(0, 2), options as fs.WriteFileOptions);
    throw Object.assign(new Error('ENOSPC: no space left on device, write'), { code: 'ENOSPC' });
  });
}

describe('writeWholeFile(file, text)', () => {
  test('writes a new file and replaces one that is there, and leaves nothing beside', () => {
    scene = fakeTerminal({ 'old.html': 'old' });
    expect(writeWholeFile(scene.path('new.html'), 'new')).toBeUndefined();
    expect(writeWholeFile(scene.path('old.html'), 'newer')).toBeUndefined();
    expect(scene.read('new.html').toString()).toBe('new');
    expect(scene.read('old.html').toString()).toBe('newer');
    expect(fs.readdirSync(scene.terminal.cwd).toSorted()).toEqual(['new.html', 'old.html']);
  });

  test('leaves no half of a file on a full disk, and an old file as it was', () => {
    scene = fakeTerminal({ 'old.html': 'old' });
    fullDisk();
    expect(writeWholeFile(scene.path('new.html'), 'new text')).toEqual({
      message: 'the disk is full',
      help: 'nothing was left behind',
    });
    expect(writeWholeFile(scene.path('old.html'), 'new text')).toEqual({
      message: 'the disk is full',
      help: 'the file that was there is as it was',
    });
    vi.restoreAllMocks();
    expect(scene.read('old.html').toString()).toBe('old');
    expect(fs.readdirSync(scene.terminal.cwd)).toEqual(['old.html']);
  });

  test('says so of a folder, of a folder that is not there, of a device, of a name that is too long', () => {
    scene = fakeTerminal({ 'old.html': 'old' });
    expect(writeWholeFile(scene.path('.'), 'x')?.message).toBe('this is a folder, expected a file to write');
    expect(writeWholeFile(scene.path('no/new.html'), 'x')?.message).toBe('the folder for the file is not there');
    expect(writeWholeFile(scene.path('old.html/new.html'), 'x')?.message).toBe('the folder for the file is no folder');
    expect(writeWholeFile(scene.path(`${'n'.repeat(300)}.html`), 'x')?.message).toBe(
      'the name of the file is too long',
    );
    expect(writeWholeFile('/dev/null', 'x')?.message).toBe('this is a device or a pipe, expected a file to write');
    expect(fs.readdirSync(scene.terminal.cwd)).toEqual(['old.html']);
  });
});
