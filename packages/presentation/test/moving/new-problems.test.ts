import type { MovingProblem, MovingResult } from '@boothwright/assessment';
import { expect, test } from 'vitest';
import { newProblems } from '../../src/moving/new-problems.js';

const range = { file: 'test.booth', from: 0, to: 5 };
const problem = (id: MovingProblem['id'], subject: string): MovingProblem => ({
  id,
  subject,
  text: id,
  fix: '',
  range,
});
const moving = (...problems: MovingProblem[]): MovingResult => ({
  ways: [],
  cards: [],
  roof: null,
  sides: null,
  obstacles: [],
  doors: [],
  assembly: null,
  problems,
  asks: [],
  leavesOut: [],
});

test('newProblems(base, variant) are those of the variant that the base has not', () => {
  const base = moving(problem('booth-hits-obstacle', 'pipe'), problem('no-order', 'walls'));
  const variant = moving(problem('booth-hits-obstacle', 'duct'), problem('no-order', 'walls'));
  expect(newProblems(base, variant).map(({ subject }) => subject)).toEqual(['duct']);
  expect(newProblems(base, null)).toEqual([]);
  expect(newProblems(null, variant)).toHaveLength(2);
});
