import { describe, expect, test } from 'vitest';
import { adaptationSpectra } from '../../src/ratings/adaptation-spectra.js';
import { spectrumLevelDifference } from '../../src/ratings/spectrum-level-difference.js';
import { weightedRating } from '../../src/ratings/weighted-rating.js';
import { weightedSoundReduction } from '../../src/ratings/weighted-sound-reduction.js';
import { weightedSoundReductionFine } from '../../src/ratings/weighted-sound-reduction-fine.js';

describe('weightedSoundReduction', () => {
  test('rounds its input to 0.1 dB first', () => {
    const flat = (value: number) => Array(21).fill(value);
    expect(weightedSoundReduction(flat(40.04))).toEqual(weightedSoundReduction(flat(40)));
    expect(weightedSoundReduction(flat(40.05))).toEqual(weightedSoundReduction(flat(40.1)));
  });
  test('the bands outside 100 Hz to 3.15 kHz act on the enlarged terms only', () => {
    const high = Array(21).fill(60);
    const weakLow = high.map((value, band) => (band < 3 ? 10 : value));
    const weakHigh = high.map((value, band) => (band > 18 ? 10 : value));
    const terms = weightedSoundReduction(high);
    expect(weightedSoundReduction(weakLow)).toMatchObject({ rw: terms.rw, c: terms.c, c100To5000: terms.c100To5000 });
    expect(weightedSoundReduction(weakLow).ctr50To3150).toBeLessThan(terms.ctr50To3150);
    expect(weightedSoundReduction(weakHigh).ctr50To3150).toBe(terms.ctr50To3150);
    expect(weightedSoundReduction(weakHigh).c100To5000).toBeLessThan(terms.c100To5000);
  });
  test('never gives a negative zero', () => {
    for (const value of Object.values(weightedSoundReduction(Array(21).fill(0)))) {
      for (const number of [value].flat()) expect(Object.is(number, -0)).toBe(false);
    }
  });
  test('names a wrong number of bands', () => {
    expect(() => weightedSoundReduction(Array(16).fill(30))).toThrow('is 16, expected 21');
    expect(() => weightedRating(Array(21).fill(30))).toThrow('is 21, expected 16');
  });
});

test('weightedSoundReductionFine(tl) rates the 16 core bands of the 21 alike', () => {
  const core = Array.from({ length: 16 }, (_, band) => 30 + band);
  expect(weightedSoundReductionFine([0, 0, 0, ...core, 0, 0])).toEqual(weightedSoundReductionFine(core));
});

test('spectrumLevelDifference(values, spectrum) of a flat loss is that loss, less the sum of the spectrum', () => {
  const spectrum = adaptationSpectra[1]['100To3150'];
  const none = spectrumLevelDifference(Array(16).fill(0), spectrum);
  expect(spectrumLevelDifference(Array(16).fill(33), spectrum)).toBeCloseTo(33 + none, 9);
  expect(() => spectrumLevelDifference([1], spectrum)).toThrow('is 1, expected 16');
});

describe('adaptationSpectra', () => {
  test('No. 1 up to 3.15 kHz is No. 1 up to 5 kHz and one decibel more in every band', () => {
    for (const [short, long] of [
      ['50To3150', '50To5000'],
      ['100To3150', '100To5000'],
    ] as const) {
      const { levels } = adaptationSpectra[1][short];
      expect(levels).toEqual(adaptationSpectra[1][long].levels.slice(0, levels.length).map((level) => level + 1));
    }
  });
  test('No. 2 has the same value for a band in every range', () => {
    const whole = adaptationSpectra[2]['50To5000'].levels;
    for (const { levels, first } of Object.values(adaptationSpectra[2])) {
      expect(levels).toEqual(whole.slice(first, first + levels.length));
    }
  });
  test('every range fills the bands that its name says', () => {
    for (const number of [1, 2] as const) {
      expect(Object.entries(adaptationSpectra[number]).map(([, { levels, first }]) => [first, levels.length])).toEqual([
        [3, 16],
        [0, 19],
        [3, 18],
        [0, 21],
      ]);
    }
  });
});
