import fs from 'node:fs';
import { afterEach, describe, expect, test } from 'vitest';
import { openWorkspace } from '../src/workspace.js';
import { fakeTerminal } from './fake-terminal.js';

let scene = fakeTerminal();
afterEach(() => scene.remove());

describe('openWorkspace(spec, text, cwd)', () => {
  test('takes the current folder when the specification lies in it', () => {
    scene = fakeTerminal({ 'booths/a.booth': 'a', 'shared.booth': 's' });
    const { entry, host, shownAs } = openWorkspace('booths/a.booth', 'a', scene.terminal.cwd);
    expect(entry).toBe('booths/a.booth');
    expect(host.read('booths/a.booth')).toEqual({ kind: 'text', text: 'a' });
    expect(host.read('shared.booth')).toEqual({ kind: 'text', text: 's' });
    expect(shownAs('shared.booth')).toBe('shared.booth');
  });

  test("takes the specification's own folder when it lies elsewhere, and names files as the user does", () => {
    scene = fakeTerminal({ 'here/.keep': '', 'there/a.booth': 'a', 'there/b.booth': 'b', 'secret.booth': 's' });
    const { entry, host, shownAs } = openWorkspace('../there/a.booth', 'a', scene.path('here'));
    expect(entry).toBe('a.booth');
    expect(host.read('b.booth')).toEqual({ kind: 'text', text: 'b' });
    expect(shownAs('b.booth')).toBe('../there/b.booth');
    expect(host.read('../secret.booth')).toMatchObject({ kind: 'refused' });
  });

  test('reads nothing above the folder, not by an absolute path, not through a symbolic link', () => {
    scene = fakeTerminal({ 'work/a.booth': 'a', 'secret.booth': 's' });
    fs.symlinkSync(scene.path('secret.booth'), scene.path('work/link.booth'));
    fs.symlinkSync(scene.path('.'), scene.path('work/up'));
    const { host } = openWorkspace('a.booth', 'a', scene.path('work'));
    for (const file of ['../secret.booth', scene.path('secret.booth'), 'link.booth', 'up/secret.booth'])
      expect(host.read(file)).toMatchObject({ kind: 'refused' });
  });

  test('follows a symbolic link that stays inside', () => {
    scene = fakeTerminal({ 'a.booth': 'a', 'b.booth': 'b' });
    fs.symlinkSync('b.booth', scene.path('c.booth'));
    expect(openWorkspace('a.booth', 'a', scene.terminal.cwd).host.read('c.booth')).toEqual({ kind: 'text', text: 'b' });
  });

  test('tells missing files from unreadable ones', () => {
    scene = fakeTerminal({ 'a.booth': 'a', 'b.booth': '\0' });
    const { host } = openWorkspace('a.booth', 'a', scene.terminal.cwd);
    expect(host.read('nowhere.booth')).toEqual({ kind: 'missing' });
    expect(host.read('b.booth')).toMatchObject({ kind: 'unreadable' });
  });
});
