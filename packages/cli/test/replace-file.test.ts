import fs from 'node:fs';
import { afterEach, expect, test } from 'vitest';
import { replaceFile } from '../src/replace-file.js';
import { fakeTerminal } from './fake-terminal.js';

let scene = fakeTerminal();
afterEach(() => scene.remove());

test('replaceFile(file, text) keeps the permissions and the symbolic link, and leaves nothing beside', () => {
  scene = fakeTerminal({ 'a.booth': 'old' });
  fs.chmodSync(scene.path('a.booth'), 0o640);
  fs.symlinkSync('a.booth', scene.path('link.booth'));
  expect(replaceFile(scene.path('link.booth'), 'new')).toBeUndefined();
  expect(scene.read('a.booth').toString()).toBe('new');
  expect(fs.lstatSync(scene.path('link.booth')).isSymbolicLink()).toBe(true);
  expect(fs.statSync(scene.path('a.booth')).mode & 0o777).toBe(0o640);
  expect(fs.readdirSync(scene.terminal.cwd).sort()).toEqual(['a.booth', 'link.booth']);
});

test('replaceFile(file, text) says why it could not and leaves the folder as it was', () => {
  scene = fakeTerminal();
  expect(replaceFile(scene.path('nowhere.booth'), 'new')).toBe('ENOENT');
  expect(fs.readdirSync(scene.terminal.cwd)).toEqual([]);
});
