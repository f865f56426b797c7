import { describe, expect, test } from 'vitest';
import { weightedRating } from '../../src/ratings/weighted-rating.js';

describe('ISO 717-1 clause 4.4, constructed boundary cases', () => {
  const reference = [33, 36, 39, 42, 45, 48, 51, 52, 53, 54, 55, 56, 56, 56, 56, 56];
  const lower = (by: number) => reference.map((value) => value - by);
  test('constructed: the reference curve itself rates 54, the sum of deviations being exactly 32.0 dB', () => {
    expect(weightedRating(reference)).toMatchObject({ rw: 54, deviationSum: 32 });
  });
  test('constructed: 0.1 dB less in one band costs a whole decibel', () => {
    expect(weightedRating(lower(2))).toMatchObject({ rw: 52, deviationSum: 32 });
    expect(weightedRating(lower(2).map((value, band) => (band === 0 ? value - 0.1 : value)))).toMatchObject({
      rw: 51,
      deviationSum: 16.1,
    });
  });
  test('constructed: no limit holds for a single band, which may deviate by 32.0 dB', () => {
    const notch = reference.map((value, band) => (band === 7 ? value - 32 : value + 10));
    expect(weightedRating(notch)).toMatchObject({ rw: 52, deviationSum: 32 });
  });
});
