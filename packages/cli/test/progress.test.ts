import { expect, test } from 'vitest';
import { startProgress } from '../src/progress.js';

function busy(milliseconds: number): void {
  const end = performance.now() + milliseconds;
  while (performance.now() < end);
}

function output(isTTY: boolean) {
  const written: string[] = [];
  return { written, isTTY, write: (text: string) => written.push(text) };
}

test('startProgress(text, output) takes its line away after more than a second of work', () => {
  const terminal = output(true);
  const end = startProgress('', terminal);
  busy(1600);
  end();
  end();
  expect(terminal.written).toEqual(['\r\u001b[K']);
});

test('startProgress(text, output) writes nothing for quick work', () => {
  const terminal = output(true);
  const end = startProgress('never seen', terminal);
  busy(100);
  end();
  expect(terminal.written).toEqual([]);
});

test('startProgress(text, output) writes nothing where there is no terminal', () => {
  const file = output(false);
  const end = startProgress('never seen', file);
  busy(1200);
  end();
  expect(file.written).toEqual([]);
});
