import { expect, test } from 'vitest';
import { frequencyWeighting } from '../../src/levels/frequency-weighting.js';

test('frequencyWeighting(kind, hz) is zero at 1 kHz for every kind', () => {
  expect(frequencyWeighting('A', 1000)).toBe(0);
  expect(frequencyWeighting('C', 1000)).toBe(0);
  expect(frequencyWeighting('Z', 63)).toBe(0);
});
test('frequencyWeighting(kind, hz) rejects a frequency that is not above zero', () => {
  expect(() => frequencyWeighting('A', 0)).toThrow('frequency is 0, expected a number of Hz above 0');
  expect(() => frequencyWeighting('Z', Number.NaN)).toThrow(RangeError);
});
