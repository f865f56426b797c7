import { expect, test } from 'vitest';
import { thirdsOfOctave } from '../../src/bands/thirds-of-octave.js';

test('thirdsOfOctave(octaveIndex) names three neighbours on the working grid', () => {
  expect(thirdsOfOctave(0)).toEqual([0, 1, 2]);
  expect(thirdsOfOctave(6)).toEqual([18, 19, 20]);
});
test('thirdsOfOctave(octaveIndex) rejects an index that names no octave', () => {
  expect(() => thirdsOfOctave(7)).toThrow('octave index is 7, expected a whole number from 0 to 6');
  expect(() => thirdsOfOctave(0.5)).toThrow(RangeError);
});
