import { afterEach, expect, test } from 'vitest';
import { exitCode, worst } from '../src/exit-code.js';
import { guarded } from '../src/guarded.js';
import { fakeTerminal } from './fake-terminal.js';

let scene = fakeTerminal();
afterEach(() => scene.remove());

test('guarded(place, terminal, work) hands the answer of the work through', () => {
  scene = fakeTerminal();
  expect(guarded('a.booth', scene.terminal, () => 'done')).toBe('done');
  expect(scene.written.stderr).toBe('');
});

test('guarded(place, terminal, work) turns an exception into one sentence without a stack trace', () => {
  scene = fakeTerminal();
  const fail = () => {
    throw new RangeError('third band is NaN\nsecond line');
  };
  expect(guarded('a.booth', scene.terminal, fail)).toBe(exitCode.misuse);
  expect(scene.written.stderr).toBe(
    'a.booth: error[internal]: boothwright itself failed on this file (third band is NaN)\n' +
      '  help: this is a mistake in boothwright and not in your text: please report it together with the specification\n',
  );
});

test('guarded(place, terminal, work) survives a stack that overflows and things thrown that are no errors', () => {
  scene = fakeTerminal();
  const deep = (): number => deep() + 1;
  expect(guarded('a.booth', scene.terminal, deep)).toBe(exitCode.misuse);
  const odd = () => {
    throw 'words';
  };
  expect(guarded('b.booth', scene.terminal, odd)).toBe(exitCode.misuse);
  expect(scene.written.stderr).toContain('b.booth: error[internal]: boothwright itself failed on this file (words)');
});

test('worst(codes) is the highest of them, and 0 for none', () => {
  expect([worst([0, 2, 1]), worst([1, 0]), worst([])]).toEqual([2, 1, 0]);
});
