// Figures are as transcribed: read in a public transcription, the printed pages were not opened.
import {
  filterBreakpoint,
  fractionalNominalFrequency,
  frequencyWeighting,
  octaveBands,
  octaveBandsBetween,
  sumLevels,
  thirdOctaveBands,
  thirdOctaveBandsBetween,
  weightedTotalOfBands,
} from '@boothwright/acoustics';
import { describe, expect, test } from 'vitest';

const exact = (nominal: number) => 1000 * 10 ** (Math.round(10 * Math.log10(nominal / 1000)) / 10);
const octaves = [63, 125, 250, 500, 1000, 2000, 4000, 8000];
const aTotal = (levels: readonly number[], bands: readonly number[]) =>
  sumLevels(levels.map((level, band) => level + frequencyWeighting('A', exact(bands[band]!))));

describe('IEC 61672-1:2013 Table 3, A and C weighting, as transcribed', () => {
  test.each([
    [10, -70.4, -14.3],
    [12.5, -63.4, -11.2],
    [16, -56.7, -8.5],
    [20, -50.5, -6.2],
    [25, -44.7, -4.4],
    [31.5, -39.4, -3.0],
    [40, -34.6, -2.0],
    [50, -30.2, -1.3],
    [63, -26.2, -0.8],
    [80, -22.5, -0.5],
    [100, -19.1, -0.3],
    [125, -16.1, -0.2],
    [160, -13.4, -0.1],
    [200, -10.9, 0],
    [250, -8.6, 0],
    [315, -6.6, 0],
    [400, -4.8, 0],
    [500, -3.2, 0],
    [630, -1.9, 0],
    [800, -0.8, 0],
    [1000, 0, 0],
    [1250, 0.6, 0],
    [1600, 1.0, -0.1],
    [2000, 1.2, -0.2],
    [2500, 1.3, -0.3],
    [3150, 1.2, -0.5],
    [4000, 1.0, -0.8],
    [5000, 0.5, -1.3],
    [6300, -0.1, -2.0],
    [8000, -1.1, -3.0],
    [10000, -2.5, -4.4],
    [12500, -4.3, -6.2],
    [16000, -6.6, -8.5],
    [20000, -9.3, -11.2],
  ])('%f Hz: A %f dB, C %f dB, to the printed tenth', (nominal, a, c) => {
    expect(Math.abs(frequencyWeighting('A', exact(nominal)) - a)).toBeLessThanOrEqual(0.0505);
    expect(Math.abs(frequencyWeighting('C', exact(nominal)) - c)).toBeLessThanOrEqual(0.0505);
  });
});

describe('IEC 61260-1:2014 exact mid-band frequencies, as transcribed', () => {
  const printed = [
    50.119, 63.096, 79.433, 100, 125.893, 158.489, 199.526, 251.189, 316.228, 398.107, 501.187, 630.957, 794.328, 1000,
    1258.925, 1584.893, 1995.262, 2511.886, 3162.278, 3981.072, 5011.872,
  ];
  test('the 21 thirds of the working grid', () => {
    thirdOctaveBands.forEach((band, index) => {
      expect(band.exact).toBeCloseTo(printed[index]!, 3);
    });
  });
  test('Table F.1, b = 3: half a band is a factor of 1.12202 up and 0.89125 down', () => {
    for (const band of thirdOctaveBands) {
      expect(band.upper / band.exact).toBeCloseTo(1.12202, 5);
      expect(band.lower / band.exact).toBeCloseTo(0.89125, 5);
    }
    expect(octaveBands.map((band) => band.nominal)).toEqual(octaves.slice(0, 7));
  });
});

describe('IEC 61260-1:2014 beyond the working grid, as transcribed', () => {
  test('exact mid-band frequencies and names from 16 Hz to 10 kHz', () => {
    const printed: readonly (readonly [number, number])[] = [
      [16, 15.849],
      [20, 19.953],
      [25, 25.119],
      [31.5, 31.623],
      [40, 39.811],
      [6300, 6309.573],
      [8000, 7943.282],
      [10000, 10000],
    ];
    const bands = thirdOctaveBandsBetween(16, 10000);
    expect(bands).toHaveLength(29);
    for (const [nominal, exact] of printed) {
      expect(bands.find((band) => band.nominal === nominal)?.exact).toBeCloseTo(exact, 3);
    }
  });
  test('Table F.1, b = 3: breakpoints of the filter limits', () => {
    for (const [octaves, above, below] of [
      [1 / 8, 1.02667, 0.97402],
      [1 / 4, 1.05575, 0.94719],
      [3 / 8, 1.08746, 0.91958],
      [1 / 2, 1.12202, 0.89125],
      [1, 1.29437, 0.77257],
    ] as const) {
      expect(filterBreakpoint(octaves, 3)).toBeCloseTo(above, 5);
      expect(1 / filterBreakpoint(octaves, 3)).toBeCloseTo(below, 5);
    }
  });
  test('annex E: 41.567 Hz is called 41.6 and 8785.2 Hz is called 8800', () => {
    expect(fractionalNominalFrequency(41.567)).toBe(41.6);
    expect(fractionalNominalFrequency(8785.2)).toBe(8800);
  });
  test('W. Lips, 66026.d (2010), 6.2.1, through the octaves from 63 Hz to 8 kHz: 104 dB', () => {
    const bands = octaveBandsBetween(63, 8000);
    expect(Math.round(weightedTotalOfBands([91, 98, 102, 101, 99, 98, 91, 85], bands, 'A'))).toBe(104);
  });
});

describe('A-weighted sums, as transcribed', () => {
  test('W. Lips, Lärmbekämpfung durch Kapselungen, 66026.d (2010), 6.2.1: 104 dB', () => {
    expect(Math.round(aTotal([91, 98, 102, 101, 99, 98, 91, 85], octaves))).toBe(104);
  });
  test('R. F. Barron, Industrial Noise Control and Acoustics (2003), example 7-8: 108.4 and 89.8 dB', () => {
    const bands = octaves.slice(1, 7);
    expect(Math.abs(aTotal([93.4, 98.5, 102.9, 104.6, 102.8, 95.5], bands) - 108.4)).toBeLessThan(0.05);
    expect(Math.abs(aTotal([82.4, 84.9, 85.9, 85.8, 83.9, 71.2], bands) - 89.8)).toBeLessThan(0.05);
  });
  test('Peters, Smith and Hollins, Acoustics and Noise Control, 3rd ed. (2011), example 1.13: 14 and 27 dB less', () => {
    const enclosure = [4, 9, 15, 21, 24, 30, 27, 26];
    const reduction = (machine: readonly number[]) =>
      aTotal(machine, octaves) -
      aTotal(
        machine.map((level, band) => level - enclosure[band]!),
        octaves,
      );
    expect(Math.round(reduction([105, 107, 99, 94, 91, 87, 82, 79]))).toBe(14);
    expect(Math.round(reduction([68, 79, 82, 87, 92, 96, 89, 81]))).toBe(27);
  });
});
