import { expect, it } from 'vitest';
import { guarded } from '../../src/common/guarded.js';

it('turns a failure into a line in the log and an empty answer', () => {
  const log: string[] = [];
  const answer = guarded(
    'Hover',
    (line) => log.push(line),
    'nothing',
    () => {
      throw new Error('out of ideas');
    },
  );
  expect(answer()).toBe('nothing');
  expect(log).toHaveLength(1);
  expect(log[0]).toMatch(/^Hover failed: .*out of ideas/);
});

it('hands a good answer on', () => {
  expect(
    guarded(
      'Sum',
      () => undefined,
      0,
      (a: number, b: number) => a + b,
    )(2, 3),
  ).toBe(5);
});
