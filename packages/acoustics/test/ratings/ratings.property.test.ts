import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { soundTransmissionClass } from '../../src/ratings/sound-transmission-class.js';
import { weightedSoundReduction } from '../../src/ratings/weighted-sound-reduction.js';
import { weightedSoundReductionFine } from '../../src/ratings/weighted-sound-reduction-fine.js';

// Whole tenths, so that a shift by a whole decibel changes no rounding.
const loss = fc.array(
  fc.integer({ min: -50, max: 900 }).map((tenths) => tenths / 10),
  { minLength: 21, maxLength: 21 },
);
const bandAndRise = fc.tuple(fc.integer({ min: 0, max: 20 }), fc.integer({ min: 1, max: 300 }));
const raise = (values: readonly number[], band: number, tenths: number) =>
  values.map((value, index) => (index === band ? value + tenths / 10 : value));
const up = (values: readonly number[], by: number) => values.map((value) => value + by);

describe('soundTransmissionClass', () => {
  test('one decibel more everywhere is one class more, the fit being the same', () => {
    fc.assert(
      fc.property(loss, (values) => {
        const fit = soundTransmissionClass(values);
        const higher = soundTransmissionClass(up(values, 1));
        expect(higher.stc).toBe(fit.stc + 1);
        expect(higher.deficiencies).toEqual(fit.deficiencies);
        expect(higher.governedBy).toBe(fit.governedBy);
      }),
    );
  });
  test('a rise in any band never lowers the class', () => {
    fc.assert(
      fc.property(loss, bandAndRise, (values, [band, tenths]) => {
        expect(soundTransmissionClass(raise(values, band, tenths)).stc).toBeGreaterThanOrEqual(
          soundTransmissionClass(values).stc,
        );
      }),
    );
  });
  test('the contour keeps both limits and the next higher one breaks the rule that is named', () => {
    fc.assert(
      fc.property(loss, (values) => {
        const fit = soundTransmissionClass(values);
        expect(fit.deficiencySum).toBeLessThanOrEqual(32);
        expect(Math.max(...fit.deficiencies)).toBeLessThanOrEqual(8);
        const next = fit.contour.map((level, band) => Math.max(0, level + 1 - fit.rounded[band]!));
        const sum = next.reduce((total, value) => total + value, 0);
        expect(sum > 32 || Math.max(...next) > 8).toBe(true);
        expect(fit.governedBy).toBe(sum > 32 ? 'sum' : 'single-band');
      }),
    );
  });
});

describe('weightedSoundReduction', () => {
  test('one decibel more everywhere is one decibel more, every adaptation term being the same', () => {
    fc.assert(
      fc.property(loss, (values) => {
        const { rw, contour: _, ...rest } = weightedSoundReduction(values);
        const { rw: higherRw, contour: __, ...higher } = weightedSoundReduction(up(values, 1));
        expect(higherRw).toBe(rw + 1);
        expect(higher).toEqual(rest);
      }),
    );
  });
  test('a rise in any band never lowers Rw, nor Rw + Ctr', () => {
    fc.assert(
      fc.property(loss, bandAndRise, (values, [band, tenths]) => {
        const before = weightedSoundReduction(values);
        const after = weightedSoundReduction(raise(values, band, tenths));
        expect(after.rw).toBeGreaterThanOrEqual(before.rw);
        expect(after.rw + after.ctr50To5000).toBeGreaterThanOrEqual(before.rw + before.ctr50To5000);
      }),
    );
  });
  test('Rw in steps of 0.1 dB lies less than 1 dB above Rw', () => {
    fc.assert(
      fc.property(loss, (values) => {
        const excess = weightedSoundReductionFine(values).rating - weightedSoundReduction(values).rw;
        expect(excess).toBeGreaterThanOrEqual(0);
        expect(excess).toBeLessThan(1);
      }),
    );
  });
});
