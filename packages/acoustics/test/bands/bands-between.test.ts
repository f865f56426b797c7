import { describe, expect, test } from 'vitest';
import { octaveBands, thirdOctaveBands } from '../../src/bands/bands.js';
import { octaveBandsBetween, thirdOctaveBandsBetween } from '../../src/bands/bands-between.js';
import { midBandFrequency } from '../../src/bands/mid-band-frequency.js';
import { octaveAbsorption } from '../../src/bands/octave-absorption.js';
import { octaveAbsorptionToThirds } from '../../src/bands/octave-absorption-to-thirds.js';
import { octaveTransmissionLoss } from '../../src/bands/octave-transmission-loss.js';
import { octaveTransmissionLossToThirds } from '../../src/bands/octave-transmission-loss-to-thirds.js';
import { ArgumentError } from '../../src/errors/argument-error.js';

const close = (found: readonly object[], expected: readonly object[]) => {
  expect(found).toHaveLength(expected.length);
  found.forEach((band, index) => {
    for (const [key, value] of Object.entries(band)) {
      const other = expected[index]![key as never] as number;
      expect(Math.abs(value / other - 1)).toBeLessThan(1e-12);
    }
  });
};

describe('bands between two nominal frequencies', () => {
  test('50 Hz to 5 kHz are the working grid, 63 Hz to 4 kHz its octaves', () => {
    close(thirdOctaveBandsBetween(50, 5000), thirdOctaveBands);
    close(octaveBandsBetween(63, 4000), octaveBands);
  });
  test('names run through the preferred numbers', () => {
    expect(thirdOctaveBandsBetween(1, 10).map((band) => band.nominal)).toEqual([
      1, 1.25, 1.6, 2, 2.5, 3.15, 4, 5, 6.3, 8, 10,
    ]);
    expect(octaveBandsBetween(16, 16000).map((band) => band.nominal)).toEqual([
      16, 31.5, 63, 125, 250, 500, 1000, 2000, 4000, 8000, 16000,
    ]);
  });
  test('a frequency that names no band is rejected with a typed error', () => {
    expect(() => octaveBandsBetween(63, 5000)).toThrow(ArgumentError);
    expect(() => thirdOctaveBandsBetween(64, 5000)).toThrow('lowest nominal frequency is 64, expected');
    expect(() => thirdOctaveBandsBetween(0, 5000)).toThrow(ArgumentError);
    expect(() => thirdOctaveBandsBetween(500, 50)).toThrow('highest nominal frequency is 50');
  });
  test('an even number of bands per octave puts an edge at 1 kHz', () => {
    expect(midBandFrequency(0, 2) / 10 ** 0.075).toBeCloseTo(1000, 9);
    expect(() => midBandFrequency(0.5, 3)).toThrow(ArgumentError);
    expect(() => midBandFrequency(0, 0)).toThrow(ArgumentError);
  });
});

test('octaves come back from thirds, absorption by the mean and transmission loss by energy', () => {
  const alpha = [0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 1.1];
  octaveAbsorption(octaveAbsorptionToThirds(alpha)).forEach((value, band) => {
    expect(value).toBeCloseTo(alpha[band]!, 12);
  });
  const loss = [10, 20, 30, 40, 50, 60, 70];
  octaveTransmissionLoss(octaveTransmissionLossToThirds(loss)).forEach((value, band) => {
    expect(value).toBeCloseTo(loss[band]!, 9);
  });
  expect(() => octaveAbsorption([0.1])).toThrow(ArgumentError);
});
