// Figures are as transcribed: read in a public transcription, the printed pages were not opened.
import {
  areaChangeLoss,
  asInsertionLoss,
  bendFlowNoise,
  branchSplitLoss,
  ductPathLevels,
  fanSoundPower,
  forwardCurvedFanLevels,
  plenumLoss,
  straightDuctFlowNoise,
  unlinedRectangularDuctOctaveLoss,
  unlinedRoundDuctOctaveLoss,
} from '@boothwright/acoustics';
import { describe, expect, test } from 'vitest';

const inch = 0.0254;
const foot = 0.3048;

describe('M. Long, Architectural Acoustics, 2nd ed. (2014)', () => {
  test('equations 14.9 to 14.11: bare rectangular duct 18 x 12 in, 6 ft', () => {
    const { octaves } = unlinedRectangularDuctOctaveLoss({ width: 18 * inch, height: 12 * inch, length: 6 * foot });
    [4.07, 2.27, 1.26, 0.31, 0.31, 0.31, 0.31, 0.31].forEach((value, octave) => {
      expect(Math.abs(octaves[octave]! - value)).toBeLessThan(0.006);
    });
  });
  test('Table 14.1: bare round duct, 10 ft', () => {
    const { octaves } = unlinedRoundDuctOctaveLoss(10 * foot);
    [0.3, 0.3, 0.3, 0.5, 0.7, 0.7, 0.7, 0.7].forEach((value, octave) => {
      expect(octaves[octave]).toBeCloseTo(value, 9);
    });
  });
  test('equation 14.17: four equal branches 6.02 dB; 0.2 of 0.2 and 0.5 from 0.6 m2 5.466 dB', () => {
    expect(branchSplitLoss(4, [1, 1, 1, 1], 0)).toBeCloseTo(6.02, 2);
    expect(branchSplitLoss(0.6, [0.2, 0.5], 0)).toBeCloseTo(5.466, 3);
  });
  test('equation 13.1: forward-curved fan, 5000 cfm, 2 in w.g., 80 %', () => {
    const duty = { flow: (5000 * foot ** 3) / 60, pressure: 2 * 249.089, efficiency: 0.8 };
    expect(fanSoundPower(duty, forwardCurvedFanLevels).map(Math.round)).toEqual([99, 99, 89, 84, 82, 77, 72, 67]);
  });
  test('Table 14.9, supply path: received levels within 1 dB', () => {
    const element = (loss: number[], flowNoise: number[]) => ({ loss: asInsertionLoss(loss), flowNoise });
    // The sheet takes 0 dB for an element without flow noise.
    const quiet = [0, 0, 0, 0, 0, 0, 0, 0];
    const levels = ductPathLevels(
      [90, 86, 82, 79, 77, 75, 71, 61],
      [
        element([0, 1, 2, 3, 3, 3, 3, 3], [41, 39, 36, 29, 20, 6, 0, 0]),
        element([7, 12, 16, 28, 35, 35, 28, 17], [49, 43, 44, 42, 42, 45, 35, 24]),
        element([2, 2, 3, 7, 15, 12, 11, 9], quiet),
        element([6, 6, 6, 6, 6, 6, 6, 6], quiet),
        element([3, 3, 5, 11, 25, 22, 16, 13], quiet),
        element([14, 14, 16, 15, 17, 22, 16, 13], quiet),
        element(quiet, [33, 32, 29, 23, 15, 4, 0, 0]),
      ],
    );
    const room = [6, 6, 5, 5, 6, 7, 6, 6];
    [52, 42, 30, 18, 9, -2, -2, -1].forEach((printed, octave) => {
      expect(Math.abs(levels[octave]! - room[octave]! - printed)).toBeLessThan(1);
    });
  });
});

test('M. Long (2014), Table 14.9, return path: received levels within 1 dB', () => {
  const quiet = [0, 0, 0, 0, 0, 0, 0, 0];
  const element = (loss: number[], flowNoise: number[]) => ({ loss: asInsertionLoss(loss), flowNoise });
  const levels = ductPathLevels(
    [90, 86, 82, 79, 77, 75, 71, 61],
    [
      element([0, 1, 2, 3, 3, 3, 3, 3], [43, 42, 39, 33, 24, 12, 0, 0]),
      element([16, 21, 35, 41, 41, 28, 21, 15], [51, 49, 53, 56, 56, 59, 60, 53]),
      element([1, 2, 3, 4, 5, 6, 8, 10], [39, 38, 34, 28, 18, 4, 0, 0]),
      element([12, 13, 19, 20, 20, 20, 21, 21], quiet),
      element(quiet, [30, 29, 26, 20, 12, 1, 0, 0]),
    ],
  );
  const room = [9, 8, 6, 8, 8, 8, 9, 10];
  [52, 41, 27, 25, 23, 25, 22, 12].forEach((printed, octave) => {
    expect(Math.abs(levels[octave]! - room[octave]! - printed)).toBeLessThan(1);
  });
});

describe('D. A. Bies, C. H. Hansen and C. Q. Howard, Engineering Noise Control, 5th ed. (2017)', () => {
  test('equation 8.275, plenum: 12.854 dB', () => {
    const plenum = { outletArea: 0.1, distance: 1, angleDeg: 0, wallArea: 20, absorption: 0.2 };
    expect(plenumLoss(plenum)).toBeCloseTo(12.854, 3);
  });
  test('equation 8.251, straight duct: 35.4347 dB', () => {
    expect(straightDuctFlowNoise(250, 10, 0.04)).toBeCloseTo(35.4347, 4);
  });
  test('equation 8.254, bend: 54.63 dB', () => {
    expect(bendFlowNoise(500, { speed: 12, area: 0.04, height: 0.2, density: 1.206 })).toBeCloseTo(54.63, 2);
  });
});

test('engineering reference, area change of 5: printed 2.5 dB, the formula gives 2.55', () => {
  expect(areaChangeLoss(5, 1)).toBeCloseTo(2.55, 2);
});
