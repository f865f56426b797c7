// Speech figures are as transcribed (a public data file; the printed standard was not opened).
//
// Known disagreement: M. J. Crocker, Engineering Acoustics (2021), Table 4.3, male speech peaks less 12 dB, lies 1 to 5 dB
// above the normal effort of ANSI S3.5 in every third from 200 Hz to 5 kHz. It describes male voices, the standard a mean
// over men and women; no effort is named. It is no check of these spectra.
import { noiseShape, speechSpectrum, sumLevels, thirdOctaveBands, weightedTotal } from '@boothwright/acoustics';
import { describe, expect, test } from 'vitest';

const known = (levels: readonly (number | null)[]) => levels.filter((level) => level !== null);

describe('ANSI S3.5-1997 Table 3, as transcribed', () => {
  // The printed overall level also holds the thirds of 6.3 and 8 kHz, which the working grid lacks; they are added here from
  // the printed spectrum levels. "raised" misses its printed overall level by 0.08 dB, for a reason not found.
  test.each([
    ['normal', 62.35, [2.59, 1.13]],
    ['raised', 68.34, [7.67, 5.07]],
    ['loud', 74.85, [13.87, 11.39]],
    ['shout', 82.3, [23.45, 20.72]],
  ] as const)('%s: the bands sum to the printed %f dB within 0.1', (effort, overall, [at6300, at8000]) => {
    const width = (steps: number) => 10 * Math.log10(1000 * 10 ** (steps / 10) * (10 ** 0.05 - 10 ** -0.05));
    const sum = sumLevels([...known(speechSpectrum(effort)), at6300 + width(8), at8000 + width(9)]);
    expect(Math.abs(sum - overall)).toBeLessThan(0.1);
  });
});

describe('ANSI S3.5-1997 Table 4, octave procedure, as transcribed', () => {
  test.each([
    ['normal', [34.75, 34.27, 25.01, 17.32, 9.33]],
    ['raised', [38.98, 40.15, 33.86, 25.32, 16.78]],
    ['loud', [41.55, 44.85, 42.16, 34.39, 25.41]],
    ['shout', [42.5, 49.24, 51.31, 44.32, 34.41]],
  ] as const)(
    '%s: spectrum levels at 250, 500, 1000, 2000 and 4000 Hz are the same in both tables',
    (effort, octaves) => {
      const spectrum = speechSpectrum(effort);
      [7, 10, 13, 16, 19].forEach((band, index) => {
        const { upper, lower } = thirdOctaveBands[band]!;
        expect(spectrum[band]! - 10 * Math.log10(upper - lower)).toBeCloseTo(octaves[index]!, 9);
      });
    },
  );
});

describe('Pearsons, Bennett and Fidell (1977) as summarised by Olsen (1998)', () => {
  // Read in the abstract: talk at home, school, hospital and shop spans 55 to 66 dBA; distances differ, so this is a bracket.
  test('normal effort at 1 m lies inside 55 to 66 dBA', () => {
    const total = weightedTotal(speechSpectrum('normal'), 'A')!;
    expect(total).toBeGreaterThan(55);
    expect(total).toBeLessThan(66);
  });
});

describe('ISO 717-1 spectra with the A-weighting undone', () => {
  // Each spectrum is relative to a total of 0 dB. No. 2 keeps its 16 core values when it is enlarged, which adds 0.23 dB; the
  // printed result of Annex C Table C.2 is only met with them unchanged.
  test.each([
    ['road-traffic', 0.23],
    ['living-noise', 0.0],
  ] as const)('%s has an A-weighted total of %f dB within 0.05', (name, total) => {
    expect(Math.abs(weightedTotal(noiseShape(name), 'A')! - total)).toBeLessThan(0.05);
  });
  // ISO 717-1 calls spectrum No. 1 A-weighted pink noise (from memory). With the A-weighting undone it has to be flat.
  test('living-noise is flat within the rounding to whole decibels', () => {
    const shape = known(noiseShape('living-noise'));
    expect(Math.max(...shape) - Math.min(...shape)).toBeLessThanOrEqual(1.05);
  });
});
