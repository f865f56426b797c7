import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { noiseCriterionBySpeechInterference } from '../../src/criteria/noise-criterion-by-speech-interference.js';
import { noiseRating, noiseRatingCurve } from '../../src/criteria/noise-rating.js';
import { roomCriterion, roomCriterionCurve } from '../../src/criteria/room-criterion.js';
import { ArgumentError } from '../../src/errors/argument-error.js';

const level = fc.double({ min: 10, max: 70, noNaN: true });
const octaves = fc.array(level, { minLength: 10, maxLength: 10 });
const raised = (levels: readonly number[], band: number, by: number) =>
  levels.map((value, index) => (index === band ? value + by : value));

describe('noiseRating', () => {
  test('a spectrum that is a curve rates its number in every band', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 129, noNaN: true }), (nr) => {
        const rating = noiseRating(noiseRatingCurve(nr));
        expect(rating.value).toBeCloseTo(nr, 9);
        for (const number of rating.byBand) expect(number).toBeCloseTo(nr, 9);
      }),
    );
  });
  test('no band lies above the contour, and the governing band touches it', () => {
    fc.assert(
      fc.property(octaves, (levels) => {
        const { contour, bands, governingHz, value } = noiseRating(levels.slice(1));
        fc.pre(value !== null);
        const excess = levels.slice(1).map((found, band) => found - contour![band]!);
        expect(Math.max(...excess)).toBeLessThan(1e-9);
        expect(excess[bands.indexOf(governingHz)]).toBeCloseTo(0, 9);
      }),
    );
  });
  // The constants, the same as those behind these rows, are from memory: this holds the arithmetic, not the standard.
  test('NR 10, 20 and 30 to a tenth', () => {
    const rounded = [62.2, 43.4, 30.7, 21.3, 14.5, 10, 6.65, 4.15, 2.3];
    noiseRatingCurve(10).forEach((value, band) => {
      expect(Math.abs(value - rounded[band]!)).toBeLessThanOrEqual(0.0501);
    });
    expect(noiseRatingCurve(20)[1]).toBeCloseTo(51.3, 9);
    expect(noiseRatingCurve(30)[8]).toBeCloseTo(22.9, 9);
  });
  test('outside its range it has no number, and misuse is named', () => {
    expect(noiseRating(Array(7).fill(Number.NEGATIVE_INFINITY))).toMatchObject({ value: null, text: 'below NR 0' });
    expect(noiseRating(Array(7).fill(160)).text).toBe('above NR 130');
    expect(() => noiseRating([1])).toThrow(ArgumentError);
    expect(() => noiseRatingCurve(-1)).toThrow('NR is -1, expected a number from 0 to 130');
  });
});

describe('noiseCriterionBySpeechInterference', () => {
  test('the contour is never exceeded, and more noise never lowers the rating', () => {
    fc.assert(
      fc.property(
        octaves,
        fc.integer({ min: 0, max: 9 }),
        fc.double({ min: 0, max: 10, noNaN: true }),
        (levels, band, more) => {
          const before = noiseCriterionBySpeechInterference(levels, 's12.2');
          const after = noiseCriterionBySpeechInterference(raised(levels, band, more), 's12.2');
          fc.pre(before.value !== null && after.value !== null);
          expect(after.value!).toBeGreaterThanOrEqual(before.value! - 1e-9);
          before.contour!.forEach((value, index) => {
            expect(levels[index]! - value).toBeLessThan(1e-9);
          });
        },
      ),
    );
  });
  test('the classic curves take 7 or 8 octaves only', () => {
    expect(() => noiseCriterionBySpeechInterference(Array(10).fill(30), 'classic')).toThrow(ArgumentError);
  });
});

describe('roomCriterion', () => {
  test.each([25, 31, 40, 50])('a neutral curve RC-%i is neutral', (rc) => {
    expect(roomCriterion(roomCriterionCurve(rc))).toMatchObject({ value: rc, tag: 'N', text: `RC ${rc}(N)` });
  });
  test('more than 5 dB below 1 kHz rumbles, more than 3 dB from 1 kHz on hisses', () => {
    const neutral = roomCriterionCurve(35);
    expect(roomCriterion(raised(neutral, 2, 5)).tag).toBe('N');
    expect(roomCriterion(raised(neutral, 2, 5.1)).tag).toBe('R');
    expect(roomCriterion(raised(neutral, 8, 3)).tag).toBe('N');
    expect(roomCriterion(raised(neutral, 8, 3.1)).tag).toBe('H');
    expect(roomCriterion(raised(raised(neutral, 8, 4), 2, 6)).text).toBe('RC 35(RH)');
  });
  test('outside RC 25 to RC 50 there is no number', () => {
    expect(roomCriterion(Array(8).fill(20)).text).toBe('below RC 25');
    expect(roomCriterion(Array(8).fill(60)).text).toBe('above RC 50');
    expect(() => roomCriterionCurve(24)).toThrow(ArgumentError);
  });
});
