import {
  airProperties,
  boxGeometry,
  boxModes,
  environmentalCorrection,
  ordinaryMeanAbsorption,
  receivedLevel,
  sabineTime,
  schroederFrequency,
} from '@boothwright/acoustics';
import { describe, expect, test } from 'vitest';

const air = airProperties({ temperature: 20, relativeHumidity: 0 });
const foot = 0.3048;

describe('reverberation time, published examples', () => {
  // F. A. Everest and K. C. Pohlmann, Master Handbook of Acoustics, reverberation example 1: 23.3 x 16 x 10 ft, concrete
  // floor 373 ft2, gypsum board 1159 ft2. The areas and 0.049 V = 182.7 were read on a page image and 3.39 s in a public
  // table; the coefficients at 1 kHz (0.02 and 0.04) are from memory. The book's 0.049 is rounded from 0.04912 at 343 m/s,
  // which explains the 0.01 s.
  test('Everest and Pohlmann, example 1, 1 kHz: 3.39 s within 0.02', () => {
    const absorption = (373 * 0.02 + 1159 * 0.04) * foot ** 2;
    expect(Math.abs(sabineTime(23.3 * 16 * 10 * foot ** 3, absorption, 0, air) - 3.39)).toBeLessThan(0.02);
  });
  // Solved textbook problem (shaalaa.com, question 57435): the page uses T = 0.161 V/A.
  test('classroom of 10 x 8 x 6 m with 25.76 m2: 3 s; mean coefficient 0.068', () => {
    expect(Math.abs(sabineTime(480, 25.76, 0, air) - 3)).toBeLessThan(0.005);
    expect(Math.abs(sabineTime(480, 376 * 0.0685, 0, air) - 3)).toBeLessThan(0.01);
  });
  // R. C. Payne and D. J. Simmons, NPL report CIRA(EXT) 009 (1996), Tables 8 to 14, as transcribed; A = 0.16 V/T there, so
  // the times differ by 0.7 %, the ratio of 0.1611 to 0.16.
  test.each([
    [91.5, 0.2],
    [428, 1.3],
    [274, 2.3],
  ])('NPL room of %f m3: %f s within 1 %%', (volume, time) => {
    expect(Math.abs(sabineTime(volume, (0.16 * volume) / time, 0, air) / time - 1)).toBeLessThan(0.01);
  });
});

describe('Schroeder frequency, worked from the equation (as printed at prosoundtraining.com)', () => {
  test('3.8 m3 at 0.2 s: about 460 Hz', () => {
    expect(Math.abs(schroederFrequency(3.8, 0.2) - 460)).toBeLessThan(5);
  });
});

describe('received level', () => {
  // ISO 16283-1 and ISO 10140-2 definition, exact case: D = 40 dB, S = 1.6 m2, A = 0.16 V/T = 0.16 m2 give R' = 50 dB.
  test('a level difference of 40 dB for R = 50 dB, S = 1.6 m2 and A = 0.16 m2', () => {
    expect(receivedLevel(70, 50, 1.6, 0.16)).toBeCloseTo(30, 12);
  });
});

describe('environmental correction K2A', () => {
  // R. C. Payne and D. J. Simmons, Environmental correction factor K2A, NPL report CIRA(EXT) 009 (1996), Tables 8 to 14
  // (read in a transcription); A = 0.16 V/T there; printed to a tenth.
  test.each([
    ['A', 91.5, 0.2, 14.1, 2.5],
    ['A', 91.5, 0.2, 28.2, 4.0],
    ['A', 91.5, 0.2, 49.6, 5.7],
    ['C', 428, 1.3, 14.1, 3.2],
    ['C', 428, 1.3, 28.2, 5.0],
    ['E', 274, 2.3, 14.1, 5.9],
    ['E', 274, 2.3, 28.2, 8.4],
  ])('NPL room %s, %f m3, %f s, surface %f m2: %f dB within 0.1', (_, volume, time, surface, expected) => {
    const correction = environmentalCorrection(surface, (0.16 * volume) / time);
    expect(Math.abs(correction - expected)).toBeLessThan(0.1);
  });
  // F. Heisterkamp, Machine Noise: Experimental Study of the Local Environmental Correction, Acoustics 6(1), 2024,
  // Table 3 (read in a transcription): mean coefficient 0.15 of 174 m2.
  test.each([
    [26.9, 7.1],
    [48.3, 9.2],
  ])('machine room, surface %f m2: %f dB within 0.05', (surface, expected) => {
    expect(Math.abs(environmentalCorrection(surface, 0.15 * 174) - expected)).toBeLessThan(0.05);
  });
});

describe('classroom of 10 x 8 x 6 m, solved textbook problem (shaalaa.com, question 57435)', () => {
  test('480 m3, 376 m2, mean coefficient 0.068 from 25.76 m2', () => {
    const { volume, surface } = boxGeometry([10, 8, 6]);
    expect(volume).toBe(480);
    expect(surface).toBe(376);
    expect(Math.abs(25.76 / surface - 0.068)).toBeLessThan(0.001);
  });
});

describe('modes of a box', () => {
  // G. Ballou (ed.), Handbook for Sound Engineers, chapter 6, Table 6-4: 16 x 12 x 8 ft at 1130 ft/s.
  const modes = boxModes([16 * foot, 12 * foot, 8 * foot], 75, { ...air, soundSpeed: 1130 * foot });
  test.each([
    ['1,0,0', 35.31],
    ['0,1,0', 47.08],
    ['0,0,1', 70.63],
    ['2,0,0', 70.63],
  ])('%s: %f Hz within 0.01', (order, hz) => {
    const mode = modes.find((candidate) => candidate.order.join() === order);
    expect(Math.abs(mode!.hz - hz)).toBeLessThan(0.01);
  });
});

// ISO 11546-2:1995, Table C.2 (read in a transcription).
test('ordinary rooms have the mean coefficients 0.05, 0.1, 0.15, 0.2, 0.25, 0.35 and 0.5', () => {
  expect(ordinaryMeanAbsorption.map(({ absorption }) => absorption)).toEqual([0.05, 0.1, 0.15, 0.2, 0.25, 0.35, 0.5]);
});
