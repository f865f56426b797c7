import { describe, expect, test } from 'vitest';
import { octaveBands, thirdOctaveBands } from '../../src/bands/bands.js';

describe('thirdOctaveBands', () => {
  test('runs from 50 Hz to 5 kHz in 21 bands with 1 kHz exact', () => {
    expect(thirdOctaveBands).toHaveLength(21);
    expect(thirdOctaveBands[0]!.exact).toBeCloseTo(50.119, 3);
    expect(thirdOctaveBands[13]!.exact).toBe(1000);
    expect(thirdOctaveBands[20]!.exact).toBeCloseTo(5011.872, 3);
  });
  test('each band begins where the one below it ends', () => {
    for (let index = 1; index < thirdOctaveBands.length; index++) {
      expect(thirdOctaveBands[index]!.lower).toBeCloseTo(thirdOctaveBands[index - 1]!.upper, 9);
    }
  });
  test('the bandwidth is 0.23077 of the mid-band frequency', () => {
    for (const band of thirdOctaveBands) expect((band.upper - band.lower) / band.exact).toBeCloseTo(0.23077, 5);
  });
});

describe('octaveBands', () => {
  test('the bandwidth is 0.70459 of the mid-band frequency', () => {
    for (const band of octaveBands) expect((band.upper - band.lower) / band.exact).toBeCloseTo(0.70459, 5);
  });
  test('every octave covers exactly three thirds of the working grid', () => {
    octaveBands.forEach((octave, index) => {
      expect(octave.lower).toBeCloseTo(thirdOctaveBands[3 * index]!.lower, 9);
      expect(octave.upper).toBeCloseTo(thirdOctaveBands[3 * index + 2]!.upper, 9);
      expect(octave.nominal).toBe(thirdOctaveBands[3 * index + 1]!.nominal);
    });
  });
});
