import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { committedText, lastCommit } from '../../src/node/committed.js';

let base: string;
const uriOf = (...names: readonly string[]) => String(pathToFileURL(path.join(base, ...names)));
const git = (...words: readonly string[]) =>
  execFileSync('git', ['-c', 'user.name=nobody', '-c', 'user.email=nobody@invalid', ...words], {
    cwd: path.join(base, 'home'),
    stdio: ['ignore', 'pipe', 'ignore'],
  });

beforeAll(() => {
  base = mkdtempSync(path.join(tmpdir(), 'booth-commit-'));
  mkdirSync(path.join(base, 'home/below/parts'), { recursive: true });
  mkdirSync(path.join(base, 'elsewhere'));
  writeFileSync(path.join(base, 'home/below/a.booth'), 'as committed\n');
  writeFileSync(path.join(base, 'home/below/parts/door.booth'), 'door');
  writeFileSync(path.join(base, 'home/above.booth'), 'above');
  symlinkSync('a.booth', path.join(base, 'home/below/link.booth'));
  git('init', '--quiet');
  git('add', '.');
  git('commit', '--quiet', '--message', 'first');
  writeFileSync(path.join(base, 'home/below/a.booth'), 'as it is now\n');
  writeFileSync(path.join(base, 'home/below/new.booth'), 'new');
});
afterAll(() => rmSync(base, { recursive: true }));

it('reads a file below the folder as it was committed, not as it is', async () => {
  const folder = uriOf('home', 'below');
  const commit = (await lastCommit(folder))!;
  expect(commit).toMatch(/^[0-9a-f]{40}$/);
  expect(await committedText(folder, commit, 'a.booth')).toEqual({ kind: 'text', text: 'as committed\n' });
  expect(await committedText(folder, commit, 'parts/door.booth')).toEqual({ kind: 'text', text: 'door' });
});

it('has nothing for what was not committed, for links, for folders and for what lies above', async () => {
  const folder = uriOf('home', 'below');
  const commit = (await lastCommit(folder))!;
  for (const file of ['new.booth', 'link.booth', 'parts', '../above.booth', '--help']) {
    expect(await committedText(folder, commit, file), file).toEqual({ kind: 'missing' });
  }
});

it('has no commit for a folder without a history, for one that is gone, and for one that is not on disk', async () => {
  expect(await lastCommit(uriOf('elsewhere'))).toBeUndefined();
  expect(await lastCommit(uriOf('gone'))).toBeUndefined();
  expect(await lastCommit('vscode-vfs://somewhere/a')).toBeUndefined();
});
