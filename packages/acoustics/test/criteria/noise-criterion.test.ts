import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { noiseCriterion } from '../../src/criteria/noise-criterion.js';
import { noiseCriterionCurve } from '../../src/criteria/noise-criterion-curve.js';

const number = fc.double({ min: 15, max: 70, noNaN: true });

describe('noiseCriterion', () => {
  test('a spectrum just under NC 15 in every band is below it, and has no number', () => {
    const quiet = noiseCriterionCurve(15).map((level) => level - 0.1);
    expect(noiseCriterion(quiet)).toEqual({ value: null, text: 'below NC 15', governingHz: null });
    expect(noiseCriterion(Array(7).fill(Number.NEGATIVE_INFINITY)).text).toBe('below NC 15');
  });
  test('a spectrum over NC 70 names the band that is furthest over', () => {
    const loud = noiseCriterionCurve(70).map((level, band) =>
      band === 1 ? level + 2 : band === 4 ? level + 1 : level,
    );
    expect(noiseCriterion(loud)).toEqual({ value: null, text: 'above NC 70', governingHz: 125 });
  });
  test('a spectrum between two curves is interpolated and its text rounded', () => {
    const rating = noiseCriterion([49, 0, 0, 0, 0, 0, 0]);
    expect(rating.value).toBeCloseTo(17.5, 12);
    expect(rating).toMatchObject({ text: 'NC 18', governingHz: 63 });
  });
  test('every interpolated curve rates its own number', () => {
    fc.assert(
      fc.property(number, (nc) => {
        expect(noiseCriterion(noiseCriterionCurve(nc)).value).toBeCloseTo(nc, 9);
      }),
    );
  });
  test('more noise in a band never lowers the rating', () => {
    fc.assert(
      fc.property(
        number,
        fc.integer({ min: 0, max: 6 }),
        fc.double({ min: 0, max: 20, noNaN: true }),
        (nc, band, more) => {
          const louder = noiseCriterionCurve(nc).map((level, index) => (index === band ? level + more : level));
          const { value, text } = noiseCriterion(louder);
          if (value === null) expect(text).toBe('above NC 70');
          else expect(value).toBeGreaterThanOrEqual(nc - 1e-9);
        },
      ),
    );
  });
  test('names a wrong number of bands and a missing value', () => {
    expect(() => noiseCriterion(Array(9).fill(30))).toThrow(
      'number of bands of the octave band level is 9, expected 7 or 8',
    );
    expect(() => noiseCriterion([30, Number.NaN, 30, 30, 30, 30, 30])).toThrow('in band 2 of 7 is NaN');
  });
});

test('noiseCriterionCurve(nc) exists from NC 15 to NC 70 only', () => {
  expect(() => noiseCriterionCurve(14)).toThrow('NC is 14, expected a number from 15 to 70');
  expect(() => noiseCriterionCurve(Number.NaN)).toThrow(RangeError);
});
