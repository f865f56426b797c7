import { describe, expect, it } from 'vitest';
import { classFromOctaves, mean, median, rootMeanSquare } from './statistics.js';

it('mean, root of the mean square and median are those of the textbook', () => {
  expect(mean([1, 2, 6])).toBe(3);
  expect(rootMeanSquare([3, -4])).toBeCloseTo(Math.sqrt(12.5), 12);
  expect(median([9, 1, 5])).toBe(5);
  expect(median([1, 2, 4, 9])).toBe(3);
});

describe('classFromOctaves(centres, values)', () => {
  const centres = [125, 250, 500, 1000, 2000, 4000];

  it('rises by one when every value does', () => {
    const curve = [20, 28, 36, 41, 40, 47];
    const higher = curve.map((value) => value + 1);
    expect(classFromOctaves(centres, higher)).toBe(classFromOctaves(centres, curve) + 1);
  });

  it('comes near the class that sources print with their octaves', () => {
    // Springer Handbook of Acoustics (2014), Table 11.4, read in a transcription: brick wall STC 45, glass STC 26.
    expect(classFromOctaves(centres, [32, 34, 40, 47, 55, 61])).toBe(45);
    expect(classFromOctaves(centres, [18, 21, 26, 31, 33, 22])).toBe(26);
  });
});
