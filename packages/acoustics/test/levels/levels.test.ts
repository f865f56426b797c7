import { describe, expect, test } from 'vitest';
import { energyOf } from '../../src/levels/energy-of.js';
import { levelOf } from '../../src/levels/level-of.js';
import { meanLevel } from '../../src/levels/mean-level.js';
import { scaleToReading } from '../../src/levels/scale-to-reading.js';
import { sumLevels } from '../../src/levels/sum-levels.js';

describe('sumLevels', () => {
  test('two equal levels make 3.01 dB more, ten make 10 dB more', () => {
    expect(sumLevels([60, 60])).toBeCloseTo(63.0103, 4);
    expect(sumLevels(Array(10).fill(60))).toBeCloseTo(70, 12);
  });
  test('no level at all is silence, and silence adds nothing', () => {
    expect(sumLevels([])).toBe(Number.NEGATIVE_INFINITY);
    expect(sumLevels([60, Number.NEGATIVE_INFINITY])).toBeCloseTo(60, 12);
  });
  test('accepts any iterable', () => {
    expect(sumLevels(new Set([50]))).toBeCloseTo(50, 12);
  });
  test('rejects NaN', () => {
    expect(() => sumLevels([60, Number.NaN])).toThrow('level is NaN, expected a number of dB');
  });
});

test('meanLevel(levels) needs a level', () => {
  expect(meanLevel([60, 60])).toBeCloseTo(60, 12);
  expect(() => meanLevel([])).toThrow('number of levels to take the mean of is 0');
});

test('levelOf(energy) rejects a negative energy', () => {
  expect(levelOf(100)).toBeCloseTo(20, 12);
  expect(() => levelOf(-1)).toThrow('energy is -1, expected zero or more');
  expect(energyOf(30)).toBeCloseTo(1000, 9);
});

test('scaleToReading(shape, reading, weighting) rejects a shape without any sound', () => {
  expect(() => scaleToReading(Array(21).fill(null), 60, 'A')).toThrow('expected a level in at least one band');
  expect(() => scaleToReading(Array(21).fill(0), Number.NaN, 'A')).toThrow('reading is NaN');
});
