import {
  fanSpeedPowerChange,
  highPassAttenuation,
  levelOf,
  microphonePattern,
  noiseCriterionCurve,
  octaveBands,
  patternRejection,
  randomEnergyEfficiency,
  recordedNoiseLevel,
  sumLevels,
  weightedTotalOfBands,
} from '@boothwright/acoustics';
import { describe, expect, test } from 'vitest';

describe('J. Eargle, The Microphone Book, 2nd ed. (2004), Table 6-1, data from H. F. Olson (1972), as transcribed', () => {
  test.each([
    ['omni', 1, 0],
    ['figure-eight', 0.33, 4.8],
    ['cardioid', 0.33, 4.8],
    ['hypercardioid', 0.25, 6.0],
  ] as const)('%s: random efficiency %f, directivity index %f dB', (name, efficiency, index) => {
    const pattern = microphonePattern(name);
    expect(Math.abs(randomEnergyEfficiency(pattern) - efficiency)).toBeLessThan(0.005);
    expect(Math.abs(patternRejection(pattern, 'diffuse') - index)).toBeLessThan(0.05);
  });
});

describe('M. A. Gerzon, J. Acoust. Soc. Am. 60 (1976) 278, as quoted by A. J. Heller (2011)', () => {
  test('the first-order supercardioid has a pressure share of 0.366025', () => {
    expect(microphonePattern('supercardioid').pressure).toBeCloseTo(0.366025, 6);
  });
  test('the least random energy efficiency of first order is 1/4, at a pressure share of 1/4', () => {
    const { pressure } = microphonePattern('hypercardioid');
    expect(pressure).toBe(0.25);
    expect(randomEnergyEfficiency({ pressure, gradient: 1 - pressure })).toBeCloseTo(0.25, 12);
    for (const other of [0.24, 0.26]) {
      expect(randomEnergyEfficiency({ pressure: other, gradient: 1 - other })).toBeGreaterThan(0.25);
    }
  });
});

describe('Georgia State University, HyperPhysics, Directional Patterns of Microphones, as read', () => {
  // Angle of no output, output at 90 and 180 degrees; at the null of the printed whole degrees the output is small, not zero.
  test.each([
    ['cardioid', 180, -6, Number.NEGATIVE_INFINITY],
    ['supercardioid', 127, -8.5, -12],
    ['hypercardioid', 110, -12, -6],
    ['figure-eight', 90, Number.NEGATIVE_INFINITY, 0],
  ] as const)('%s: no output at %f degrees, %f dB at the side, %f dB behind', (name, nullAngle, side, behind) => {
    const { pressure, gradient } = microphonePattern(name);
    const at = (degrees: number) => pressure + gradient * Math.cos((degrees * Math.PI) / 180);
    expect(Math.abs(at(nullAngle))).toBeLessThan(0.02);
    if (Number.isFinite(side)) expect(Math.abs(20 * Math.log10(Math.abs(at(90))) - side)).toBeLessThan(0.3);
    if (Number.isFinite(behind)) expect(Math.abs(20 * Math.log10(Math.abs(at(180))) - behind)).toBeLessThan(0.6);
  });
});

describe('a page of fan laws, read as transcribed: 50 lg of the speeds', () => {
  // It prints 11.7 dB for 7 V of 12 V and 6.25 dB for 9 V of 12 V.
  test('7/12 and 9/12 of the speed', () => {
    expect(fanSpeedPowerChange(7 / 12)).toBeCloseTo(-11.7, 1);
    expect(fanSpeedPowerChange(9 / 12)).toBeCloseTo(-6.25, 2);
  });
});

describe('from a read to a room tone: an octave table of a normal voice at 3 ft (as transcribed, author not shown)', () => {
  const voice = [57, 62, 63, 57, 48, 40];
  const octaves = (levels: readonly number[], weighting: 'A' | 'Z') =>
    weightedTotalOfBands(levels, octaveBands.slice(-levels.length), weighting);
  // What is compared is printed in whole decibels, each sum from rounded ones.
  const feet = 0.3048;
  const atCapsule = octaves(voice, 'Z') + 2 * levelOf((3 * feet) / 0.15);
  const nc15 = noiseCriterionCurve(15);

  test('is 66.7 dB unweighted and 63 dBA, and 82 dB at 15 cm by distance alone', () => {
    expect(octaves(voice, 'Z')).toBeCloseTo(66.7, 1);
    expect(Math.abs(octaves(voice, 'A') - 63)).toBeLessThan(0.7);
    expect(Math.abs(atCapsule - 82)).toBeLessThan(0.7);
  });

  test('set to -20 dBFS, -60 dBFS is 42 dB at the capsule', () => {
    expect(recordedNoiseLevel({ voice: 82, noise: 42, voiceSetTo: -20 })).toBe(-60);
  });

  test('NC 15 has 47 dB, 27 dBA, and reads -55 dBFS, while the same noise A-weighted reads -75', () => {
    const noise = octaves(nc15, 'Z');
    expect(Math.abs(noise - 47)).toBeLessThan(0.6);
    expect(Math.abs(octaves(nc15, 'A') - 27)).toBeLessThan(0.6);
    expect(Math.abs(recordedNoiseLevel({ voice: 82, noise, voiceSetTo: -20 }) + 55)).toBeLessThan(0.6);
    expect(Math.abs(recordedNoiseLevel({ voice: 82, noise: octaves(nc15, 'A'), voiceSetTo: -20 }) + 75)).toBeLessThan(
      0.7,
    );
  });

  test('a second-order filter of 80 Hz takes 5.6 dB at 63 Hz and 0.7 dB at 125 Hz, which brings NC 15 to -60', () => {
    expect(highPassAttenuation(63, 80)).toBeCloseTo(5.6, 1);
    expect(highPassAttenuation(125, 80)).toBeCloseTo(0.7, 1);
    const filtered = nc15.map((level, band) => level - highPassAttenuation(octaveBands[band]!.exact, 80));
    expect(Math.abs(recordedNoiseLevel({ voice: 82, noise: sumLevels(filtered), voiceSetTo: -20 }) + 60)).toBeLessThan(
      0.7,
    );
  });

  test('a read 6 dB softer with more gain costs 6 dB', () => {
    expect(recordedNoiseLevel({ voice: 76, noise: 42, voiceSetTo: -20 })).toBe(-54);
  });
});
