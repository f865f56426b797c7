// Figures marked "as transcribed" were read in public transcriptions; the printed pages were not opened.
import {
  type Air,
  airProperties,
  cavityLimitFrequency,
  doubleLeafResonance,
  massLawField,
  sharpDoubleLeaf,
  sharpLineGain,
} from '@boothwright/acoustics';
import { describe, expect, test } from 'vitest';

const room = airProperties({ temperature: 20, relativeHumidity: 0.5 });
const air: Air = { ...room, density: 1.205, soundSpeed: 343, impedance: 1.205 * 343 };
const leaf = { surfaceMass: 12.16, criticalFrequency: Number.POSITIVE_INFINITY, lossFactor: 0 };

test('mass-air-mass 76.95 Hz with the rounded 60, 76.85 exact (Bies, Hansen, Howard 2017, Eq. 7.62, as transcribed), within 0.3 %', () => {
  const found = doubleLeafResonance(12.16, 12.16, { depth: 0.1, fillDepth: 0 }, air);
  expect(Math.abs(found / 76.95 - 1)).toBeLessThan(0.003);
});

describe('Sharp form, Bies, Hansen, Howard 2017, Sect. 7.2.6, and Long, Eqs. 9.46-9.51, as transcribed', () => {
  const wall = { leaves: [leaf, leaf], cavity: { depth: 0.1, fillDepth: 0 }, absorptionRatio: 2 } as const;
  const at = (hz: number) => sharpDoubleLeaf(wall, { air, frequencies: [hz] })[0]!;

  test('fl = 545.9 Hz for 0.1 m', () => {
    expect(cavityLimitFrequency(0.1, air)).toBeCloseTo(545.9, 1);
  });

  test('mass law of both below f0, R1 + R2 + 20 lg(2 k d) up to fl, R1 + R2 + 6 above', () => {
    const both = (hz: number) => 2 * massLawField(hz, 12.16, air);
    expect(at(50)).toBe(massLawField(50, 24.32, air));
    expect(at(300)).toBeCloseTo(both(300) + 20 * Math.log10((4 * Math.PI * 300 * 0.1) / 343), 9);
    expect(at(1000) - both(1000)).toBeCloseTo(6.02, 2);
  });
});

test('line connections gain 10 lg(b fc) - 23 dB (Vigran: Building Acoustics, 2008, Eq. 8.26, as transcribed), within 0.5 dB', () => {
  const board = { surfaceMass: 9, criticalFrequency: 2500, lossFactor: 0.02 };
  expect(Math.abs(sharpLineGain([board, board], 0.6, air) - (10 * Math.log10(0.6 * 2500) - 23))).toBeLessThan(0.5);
});
