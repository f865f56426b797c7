// ASTM E413 itself was not opened: contour and rules are from memory, confirmed by secondary pages. Three laboratory reports
// print thirds, deficiencies and class. Handbook rows give octaves only; what they can show is said below.
import { soundTransmissionClass } from '@boothwright/acoustics';
import { describe, expect, test } from 'vitest';

const shape = [-16, -13, -10, -7, -4, -1, 0, 1, 2, 3, 4, 4, 4, 4, 4, 4];

// Reports of the laboratory with NVLAP code 200248-0, ASTM E90, read in public text copies; thirds from 125 Hz to 4 kHz.
describe('laboratory reports to ASTM E90 with printed deficiencies', () => {
  test('test OL15-1013 (2015), gypsum board on steel studs: STC 50, held by 8 dB at 2.5 kHz', () => {
    const loss = [34, 36, 41, 45, 46, 50, 53, 54, 56, 57, 56, 55, 48, 46, 49, 54];
    const fit = soundTransmissionClass(loss);
    expect(fit).toMatchObject({ stc: 50, governedBy: 'single-band', governingHz: 2500 });
    // The copy breaks off after the first three printed deficiencies: 1, 6 and 8 dB.
    expect(fit.deficiencies.filter((value) => value > 0).slice(0, 3)).toEqual([1, 6, 8]);
  });
  test('test OL 05-1056 (2005), fibreboard and gypsum board on wood studs: STC 46, all printed deficiencies', () => {
    const loss = [28, 38, 34, 40, 39, 37, 44, 46, 49, 51, 51, 50, 44, 45, 50, 57];
    const fit = soundTransmissionClass(loss);
    expect(fit.stc).toBe(46);
    expect(fit.deficiencies).toEqual([2, 0, 2, 0, 3, 8, 2, 1, 0, 0, 0, 0, 6, 5, 0, 0]);
  });
  test('test OL 10-0941 (2010), a fixed window: STC 33, all printed deficiencies and their sum of 23', () => {
    const loss = [21, 24, 20, 24, 28, 29, 31, 34, 35, 38, 38, 37, 32, 32, 35, 42];
    const fit = soundTransmissionClass(loss);
    expect(fit).toMatchObject({ stc: 33, deficiencySum: 23, governedBy: 'sum' });
    expect(fit.deficiencies.filter((value) => value > 0)).toEqual([3, 2, 1, 3, 2, 5, 5, 2]);
  });
});

/** Octave transmission loss 125 Hz to 4 kHz, published STC, and what interpolation makes of it less the published STC. */
const octaveRows: readonly (readonly [string, readonly number[], number, number])[] = [
  // T. D. Rossing (ed.), Springer Handbook of Acoustics, 2nd ed. 2014, Table 11.4, as transcribed.
  ['drywall on wood studs', [17, 31, 33, 40, 38, 36], 33, 3],
  ['double drywall on wood studs', [25, 34, 41, 51, 48, 50], 41, 3],
  ['drywall on staggered wood studs', [23, 28, 39, 46, 54, 44], 39, 2],
  ['drywall on metal studs', [22, 27, 43, 47, 37, 46], 39, 0],
  ['open-plan office partition', [10, 12, 12, 12, 12, 11], 12, 0],
  ['4 in brick wall', [32, 34, 40, 47, 55, 61], 45, 0],
  ['single 1/8 in glass', [18, 21, 26, 31, 33, 22], 26, 0],
  ['double 1/8 in glass, 2 in gap', [13, 25, 35, 44, 49, 43], 37, -1],
  ['hollow wood door', [14, 19, 23, 18, 17, 21], 19, 0],
  ['hollow metal door', [24, 23, 29, 31, 24, 40], 28, 0],
  ['wood joist floor', [23, 32, 36, 45, 49, 56], 37, 4],
  // ASHRAE Handbook HVAC Applications 2019, chapter 49, Table 40, as transcribed.
  ['200 mm concrete block', [35, 41, 44, 50, 57, 64], 50, -1],
  ['gypsum board on 92 mm metal studs', [16, 33, 47, 55, 43, 47], 38, 2],
  ['double gypsum board on metal studs, filled', [32, 50, 62, 67, 58, 63], 56, 0],
  ['150 mm concrete floor', [40, 40, 49, 58, 67, 76], 53, 0],
  ['concrete floor, gypsum board on isolators', [63, 70, 84, 93, 104, 105], 84, -1],
];

// These rows cannot be met exactly: an octave value leaves its three thirds open, and the STC was found from thirds that
// aren't printed. A narrow dip (mass-air-mass resonance, coincidence) lowers the STC and is smoothed away by interpolation,
// so the estimates lie high for light double walls. The test holds the size of that error, not the rule.
describe('handbook octave rows through log-frequency interpolation, an estimate and no check of the rule', () => {
  test.each(octaveRows)(
    '%s: the estimate differs from the published STC by the stated amount',
    (_, octaves, stc, off) => {
      const thirds = shape.map((__, band) => {
        const below = Math.min(Math.floor(band / 3), 4);
        return octaves[below]! + (band / 3 - below) * (octaves[below + 1]! - octaves[below]!);
      });
      expect(soundTransmissionClass(thirds).stc - stc).toBe(off);
    },
  );
});
