import { questions } from '@boothwright/language';
import { afterEach, expect, it } from 'vitest';
import { run } from '../src/run.js';
import { fakeTerminal } from './fake-terminal.js';

let scene: ReturnType<typeof fakeTerminal> | undefined;
afterEach(() => scene?.remove());
const fresh = (files: Record<string, string> = {}) => {
  scene = fakeTerminal(files);
  return scene;
};

it('writes a spec that checks', () => {
  const { terminal, written, read } = fresh();
  const words = ['new', 'mine.booth', '--room', '3.6 x 3.1 x 2.45 m', '--noise', '52 dBA', '--floor-limit', '1.5 kPa'];
  expect(run([...words, '--floor', 'timber'], terminal)).toBe(0);
  expect(written.stderr).toBe('');
  const text = read('mine.booth').toString();
  expect(text).toMatch(/room +3.6 m x 3.1 m x 2.45 m/);
  expect(text).toMatch(/floor +timber limit 1.5 kPa/);
  expect(run(['format', '--check', 'mine.booth'], terminal)).toBe(0);
});

it('prints the spec when no file is named', () => {
  const { terminal, written } = fresh();
  expect(run(['new', '--kind', 'wardrobe'], terminal)).toBe(0);
  expect(written.stdout).toMatch(/^# A wardrobe as it stands/);
});

it('tells of an answer that it left out', () => {
  const { terminal, written } = fresh();
  expect(run(['new', '--door', '3 kg'], terminal)).toBe(1);
  expect(written.stderr).toMatch(/^--door: error\[answer-left-out\]: `3 kg` was left out: expected `x`/);
});

it('writes over no file', () => {
  const { terminal, written, read } = fresh({ 'mine.booth': '# mine\n' });
  expect(run(['new', 'mine.booth'], terminal)).toBe(2);
  expect(written.stderr).toMatch(/mine\.booth: error\[file-exists\]/);
  expect(read('mine.booth').toString()).toBe('# mine\n');
});

it('has an option for each question', () => {
  const { terminal, written } = fresh();
  expect(run(['new', '--help'], terminal)).toBe(0);
  for (const { name } of questions) expect(written.stdout).toContain(`--${name} <ANSWER>`);
});
