import { expect, test } from 'vitest';
import { ArgumentError } from '../../src/errors/argument-error.js';
import { subtractLevel } from '../../src/levels/subtract-level.js';
import { sumLevels } from '../../src/levels/sum-levels.js';

test('subtractLevel(total, part) undoes a sum', () => {
  expect(subtractLevel(sumLevels([60, 52]), 52)).toBeCloseTo(60, 9);
  expect(subtractLevel(50, 50)).toBe(Number.NEGATIVE_INFINITY);
});
test('subtractLevel(total, part) rejects a part above the total', () => {
  expect(() => subtractLevel(50, 51)).toThrow(ArgumentError);
});
