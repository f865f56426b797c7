// Every row is "as transcribed": the figures were read in a public transcription of the cited document, whose printed
// pages were not opened. The enlarged adaptation spectra are from memory, confirmed by public transcriptions; of them only
// 50 Hz to 5 kHz has a printed result to be held against.
import {
  adaptationSpectra,
  asLevelDifference,
  spectrumLevelDifference,
  weightedLevelDifference,
  weightedRating,
  weightedRatingOctaves,
  weightedSoundReduction,
  weightedSoundReductionFine,
} from '@boothwright/acoustics';
import { describe, expect, test } from 'vitest';

const annexC = [20.4, 16.3, 17.7, 22.6, 22.4, 22.7, 24.8, 26.6, 28.0, 30.5, 31.8, 32.5, 33.4, 33.0, 31.0, 25.5];
const annexCEnlarged = [18.7, 19.2, 20.0, ...annexC, 26.8, 29.2];

describe('ISO 717-1:2020 Annex C, as transcribed', () => {
  test('Table C.1: Rw (C; Ctr) is 30 (-2; -3), the unfavourable deviations sum to 31.8 dB', () => {
    const rating = weightedRating(annexC);
    expect(rating).toMatchObject({ rw: 30, c: -2, ctr: -3, deviationSum: 31.8 });
    expect(rating.contour).toEqual([11, 14, 17, 20, 23, 26, 29, 30, 31, 32, 33, 34, 34, 34, 34, 34]);
    expect(rating.deviations).toEqual([0, 0, 0, 0, 0.6, 3.3, 4.2, 3.4, 3, 1.5, 1.2, 1.5, 0.6, 1, 3, 8.5]);
  });
  test('Table C.1: the intermediate sums are 0.001476199 and 0.002060636', () => {
    const sum = (number: 1 | 2) =>
      10 ** (-spectrumLevelDifference(annexC, adaptationSpectra[number]['100To3150']) / 10);
    expect(sum(1)).toBeCloseTo(0.001476199, 9);
    expect(sum(2)).toBeCloseTo(0.002060636, 9);
  });
  test('Table C.2: C and Ctr from 50 Hz to 5 kHz are -2 and -4, from 28.212 and 26.355 dB', () => {
    expect(weightedSoundReduction(annexCEnlarged)).toMatchObject({
      rw: 30,
      c: -2,
      ctr: -3,
      c50To5000: -2,
      ctr50To5000: -4,
    });
    // Half a unit of the last printed digit.
    const difference = (number: 1 | 2) =>
      spectrumLevelDifference(annexCEnlarged, adaptationSpectra[number]['50To5000']);
    expect(Math.abs(difference(1) - 28.212)).toBeLessThan(0.00055);
    expect(Math.abs(difference(2) - 26.355)).toBeLessThan(0.00055);
  });
});

describe('field report no. 25334 of 10 October 2022, rated to ISO 717-1, as transcribed', () => {
  test('test 97463, masonry wall: DnT,w (C; Ctr) is 59 (-1; -4), sum 23.6 dB', () => {
    const wall = [40.8, 42.9, 47.3, 52.1, 56.6, 53.2, 55.8, 57.8, 59.3, 59.3, 58.6, 59.3, 59.2, 59.8, 61.6, 62.6];
    expect(weightedRating(wall)).toMatchObject({ rw: 59, c: -1, ctr: -4, deviationSum: 23.6 });
  });
  test('test 97465, timber-joist floor: DnT,w (C; Ctr) is 52 (-2; -3), sum 26.3 dB', () => {
    const floor = [35.6, 46.3, 42.7, 48.5, 43.2, 49.5, 53, 52.7, 54.9, 54.2, 57, 54, 47.8, 46.4, 51.9, 55.4];
    expect(weightedRating(floor)).toMatchObject({ rw: 52, c: -2, ctr: -3, deviationSum: 26.3 });
  });
});

describe('cabins measured to ISO 11957 by the AGH University of Krakow, as transcribed', () => {
  test('report 5.5.130 (2023), sheet 10, an acoustic booth: Dp,w is 22', () => {
    const booth = [10, 20.1, 14.7, 19.3, 20.6, 19.9, 23.2, 20.4, 17.6, 19.1, 18.8, 20.2, 21.8, 24.4, 26.8, 28.3];
    expect(weightedLevelDifference(asLevelDifference(booth)).weighted).toBe(22);
  });
  test('report 5.5.130.680 (2017), sheet 11, a telephone booth in whole decibels: Dp,w is 30', () => {
    const booth = [12, 18, 14, 15, 20, 25, 28, 31, 31, 33, 34, 34, 31, 30, 32, 33];
    expect(weightedLevelDifference(asLevelDifference(booth)).weighted).toBe(30);
  });
});

describe('ISO 12354-1:2017 Annex L Table L.1, as transcribed', () => {
  const resulting = [
    28.8, 30.4, 33.4, 35.3, 37.6, 40.0, 43.1, 46.4, 49.7, 52.9, 55.9, 58.9, 61.9, 64.8, 67.3, 69.0, 70.2, 71.0, 70.9,
    70.9, 70.9,
  ];
  // The table prints 57.8 beside 57.9 for the same curve; its own figures are rounded to 0.1 dB.
  test('the rating in steps of 0.1 dB is the printed 57.8', () => {
    expect(weightedSoundReductionFine(resulting).rating).toBe(57.8);
  });
});

describe('ISO 717-1:2020 Table 3, as transcribed', () => {
  // A curve that no band but 500 Hz holds down shows the reference shape itself.
  test('the reference curve in thirds and in octaves', () => {
    const thirds = weightedRating(Array(16).fill(60));
    expect(thirds.contour.map((value) => value - thirds.rw + 52)).toEqual([
      33, 36, 39, 42, 45, 48, 51, 52, 53, 54, 55, 56, 56, 56, 56, 56,
    ]);
    const octaves = weightedRatingOctaves(Array(5).fill(60));
    expect(octaves.contour.map((value) => value - octaves.rw + 52)).toEqual([36, 45, 52, 55, 56]);
  });
});
