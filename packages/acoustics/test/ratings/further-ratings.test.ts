import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { thirdOctaveBandsBetween } from '../../src/bands/bands-between.js';
import { ArgumentError } from '../../src/errors/argument-error.js';
import { weightedTotalOfBands } from '../../src/levels/weighted-total-of-bands.js';
import { asLevelDifference } from '../../src/quantities/level-difference.js';
import {
  apparentTransmissionLoss,
  normalizedLevelDifference,
  receivingAbsorptionArea,
  standardizedLevelDifference,
} from '../../src/ratings/field-insulation.js';
import { noiseIsolationClass } from '../../src/ratings/noise-isolation-class.js';
import { noiseReductionCoefficient, soundAbsorptionAverage } from '../../src/ratings/noise-reduction-coefficient.js';
import { outdoorIndoorTransmissionClass } from '../../src/ratings/outdoor-indoor-transmission-class.js';
import { soundTransmissionClass } from '../../src/ratings/sound-transmission-class.js';
import { practicalAbsorption, weightedAbsorption } from '../../src/ratings/weighted-absorption.js';
import { weightedLevelDifference } from '../../src/ratings/weighted-level-difference.js';
import { weightedRating } from '../../src/ratings/weighted-rating.js';
import { weightedRatingOctaves } from '../../src/ratings/weighted-rating-octaves.js';
import { weightedSoundReduction } from '../../src/ratings/weighted-sound-reduction.js';

const tenths = fc.integer({ min: 0, max: 800 }).map((value) => value / 10);
const grid = fc.array(tenths, { minLength: 21, maxLength: 21 });
const raised = (values: readonly number[], band: number, by: number) =>
  values.map((value, index) => (index === band ? value + by : value));

describe('outdoorIndoorTransmissionClass', () => {
  test('a flat loss rates itself: the A-weighted source is the constant', () => {
    expect(outdoorIndoorTransmissionClass(Array(18).fill(30)).unrounded).toBeCloseTo(30, 2);
    const source = outdoorIndoorTransmissionClass(Array(18).fill(0));
    // At the exact centres the weighting differs from its printed tenths by less than 0.05 dB.
    const unweighted = [103, 102, 101, 98, 97, 95, 94, 93, 93, 91, 90, 89, 89, 88, 88, 87, 85, 84];
    expect(weightedTotalOfBands(unweighted, thirdOctaveBandsBetween(80, 4000), 'A')).toBeCloseTo(100.13, 1);
    expect(source.oitc).toBe(0);
  });
  test('a decibel more in all bands is one more, and no band ever lowers it', () => {
    fc.assert(
      fc.property(grid, fc.integer({ min: 0, max: 20 }), (values, band) => {
        const { oitc } = outdoorIndoorTransmissionClass(values);
        expect(outdoorIndoorTransmissionClass(values.map((value) => value + 1)).oitc).toBe(oitc + 1);
        expect(outdoorIndoorTransmissionClass(raised(values, band, 3)).oitc).toBeGreaterThanOrEqual(oitc);
      }),
    );
  });
  test('names a wrong number of bands', () => {
    expect(() => outdoorIndoorTransmissionClass([1])).toThrow(ArgumentError);
  });
});

describe('level differences', () => {
  test('NIC is the fit of STC on a level difference', () => {
    fc.assert(
      fc.property(grid, (values) => {
        const { nic, ...fit } = noiseIsolationClass(asLevelDifference(values));
        expect({ stc: nic, ...fit }).toEqual(soundTransmissionClass(values));
      }),
    );
  });
  test('a weighted level difference is the fit of Rw, with the enlarged terms only from 21 bands', () => {
    const values = Array.from({ length: 21 }, (_, band) => 20 + band);
    const whole = weightedLevelDifference(asLevelDifference(values));
    const rw = weightedSoundReduction(values);
    expect(whole).toMatchObject({ weighted: rw.rw, c: rw.c, enlarged: { ctr50To5000: rw.ctr50To5000 } });
    const core = weightedLevelDifference(asLevelDifference(values.slice(3, 19)));
    expect(core).toMatchObject({ weighted: rw.rw, ctr: rw.ctr, enlarged: null });
  });
  test('a level difference is no transmission loss, and the compiler says so', () => {
    const difference = asLevelDifference(Array(21).fill(30));
    // @ts-expect-error A level difference has no sound transmission class.
    expect(soundTransmissionClass(difference).stc).toBeGreaterThan(0);
    // @ts-expect-error A level difference has no weighted sound reduction index.
    expect(weightedSoundReduction(difference).rw).toBeGreaterThan(0);
  });
});

describe('field quantities', () => {
  const d = asLevelDifference([40]);
  // ISO 16283-1 by hand: 10 lg(5 / 0.5) = 10; A = 0.16 m2, 10 lg(1.6 / 0.16) = 10.
  test('D 40 dB with T 5 s makes DnT 50 dB, and with S 1.6 m2, V 1 m3, T 1 s makes R-prime 50 dB', () => {
    expect(standardizedLevelDifference(d, [5])[0]).toBeCloseTo(50, 9);
    expect(apparentTransmissionLoss(d, 1.6, [receivingAbsorptionArea(1, 1)])[0]).toBeCloseTo(50, 9);
    expect(normalizedLevelDifference(d, [1])[0]).toBeCloseTo(50, 9);
  });
  test('R-prime of a 10 m2 element is Dn', () => {
    expect(apparentTransmissionLoss(d, 10, [7])[0]).toBeCloseTo(normalizedLevelDifference(d, [7])[0]!, 9);
  });
  test('misuse is named', () => {
    expect(() => standardizedLevelDifference(d, [1, 2])).toThrow(ArgumentError);
    expect(() => standardizedLevelDifference(d, [0])).toThrow('reverberation time in band 1 of 1 is 0');
    expect(() => apparentTransmissionLoss(d, 0, [1])).toThrow(ArgumentError);
    expect(() => receivingAbsorptionArea(0, 1)).toThrow(ArgumentError);
  });
});

describe('weightedRatingOctaves', () => {
  test('constructed: two decibels below the reference curve sum to 10.0 and rate 52', () => {
    expect(weightedRatingOctaves([34, 43, 50, 53, 54])).toMatchObject({ rw: 52, deviationSum: 10 });
    expect(weightedRatingOctaves([33.9, 43, 50, 53, 54]).rw).toBe(51);
  });
  test('a decibel more in all octaves is one more', () => {
    fc.assert(
      fc.property(fc.array(tenths, { minLength: 5, maxLength: 5 }), (values) => {
        const { rw, c, ctr } = weightedRatingOctaves(values);
        expect(weightedRatingOctaves(values.map((value) => value + 1))).toMatchObject({ rw: rw + 1, c, ctr });
      }),
    );
  });
  test('an energy sum of the thirds of each spectrum is that of the octaves within rounding', () => {
    const thirds = weightedRating(Array(16).fill(40));
    const octaves = weightedRatingOctaves(Array(5).fill(40));
    expect(Math.abs(thirds.rw + thirds.c - octaves.rw - octaves.c)).toBeLessThanOrEqual(1);
    expect(Math.abs(thirds.rw + thirds.ctr - octaves.rw - octaves.ctr)).toBeLessThanOrEqual(1);
  });
});

const steps = fc.array(fc.integer({ min: 0, max: 20 }), { minLength: 5, maxLength: 5 });

describe('absorption ratings', () => {
  test('more absorption in an octave never lowers alpha_w, and the deviations sum to 0.10 at most', () => {
    fc.assert(
      fc.property(steps, fc.integer({ min: 0, max: 4 }), (values, band) => {
        const before = weightedAbsorption(values.map((value) => value / 20));
        const more = raised(values, band, values[band]! < 20 ? 1 : 0);
        expect(weightedAbsorption(more.map((value) => value / 20)).alphaW).toBeGreaterThanOrEqual(before.alphaW);
        expect(before.deviationSum).toBeLessThanOrEqual(0.1);
      }),
    );
  });
  test('the practical coefficient is the mean of three thirds in steps of 0.05, at most 1', () => {
    const thirds = [0.1, 0.1, 0.17, 0.6, 0.62, 0.655, ...Array(12).fill(1.1)];
    expect(practicalAbsorption(thirds)).toEqual([0.1, 0.65, 1, 1, 1, 1]);
    expect(practicalAbsorption([0, 0, 0, ...thirds])).toEqual(practicalAbsorption(thirds));
  });
  test('nothing absorbed is 0.00 and not classified; all of it is governed by the reference curve', () => {
    expect(weightedAbsorption([0, 0, 0, 0, 0])).toMatchObject({ alphaW: 0, absorptionClass: null, governedBy: 'sum' });
    expect(weightedAbsorption([1, 1, 1, 1, 1])).toMatchObject({ absorptionClass: 'A', governedBy: 'reference' });
    expect(weightedAbsorption([0.05, 0.3, 0.3, 0.55, 0.55]).indicators).toContain('H');
  });
  test('NRC and SAA take the working grid or just their own bands', () => {
    const ramp = Array.from({ length: 21 }, (_, band) => band / 20);
    expect(noiseReductionCoefficient(ramp)).toEqual(
      noiseReductionCoefficient([7, 10, 13, 16].map((band) => band / 20)),
    );
    expect(soundAbsorptionAverage(ramp)).toEqual(soundAbsorptionAverage(ramp.slice(6, 18)));
    expect(soundAbsorptionAverage(ramp).value).toBe(0.58);
  });
  test('misuse is named', () => {
    expect(() => weightedAbsorption([0.33, 0, 0, 0, 0])).toThrow('at 250 Hz is 0.33, expected a multiple of 0.05');
    expect(() => noiseReductionCoefficient([-1, 0, 0, 0])).toThrow(ArgumentError);
    expect(() => practicalAbsorption([1])).toThrow(ArgumentError);
  });
});
