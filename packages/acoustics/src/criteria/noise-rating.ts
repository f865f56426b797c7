import { requireBands } from '../bands/require-bands.js';
import { ArgumentError } from '../errors/argument-error.js';
import { octavesByCount } from './octaves-by-count.js';

// ISO 1996:1971 and AS 1469:1983, from memory; seen alike in a public text that names the second. Octaves 31.5 Hz to 8 kHz.
const offsets = [55.4, 35.5, 22, 12, 4.8, 0, -3.5, -6.1, -8];
const slopes = [0.681, 0.79, 0.87, 0.93, 0.974, 1, 1.015, 1.025, 1.03];
const lowest = 0;
const highest = 130;

/** A noise rating (NR) and the octave that decides it. */
export type NoiseRating = {
  /** Null when the spectrum lies below NR 0 or above NR 130. */
  readonly value: number | null;
  /** `NR 17`, `below NR 0` or `above NR 130`. */
  readonly text: string;
  /** Nominal Hz of the band with the highest number. */
  readonly governingHz: number;
  /** Nominal Hz of the bands that the two lists follow. */
  readonly bands: readonly number[];
  /** The number of the curve on which each band lies. */
  readonly byBand: readonly number[];
  /** The curve of the rating, dB; null when there is no number. */
  readonly contour: readonly number[] | null;
};

/**
 * A noise rating (NR) curve.
 *
 * Equation: L = a + b NR.
 * Units: NR number in, octave band levels in dB out, 31.5 Hz to 8 kHz (9 bands).
 * Source: ISO 1996:1971 / AS 1469:1983, constants from memory: no published table was opened, so verify before relying
 * on a tenth of a decibel.
 * Valid: NR 0 to NR 130.
 * Errors: ArgumentError outside NR 0 .. 130.
 */
export function noiseRatingCurve(nr: number): number[] {
  if (!(nr >= lowest && nr <= highest)) throw new ArgumentError('NR', nr, `a number from ${lowest} to ${highest}`);
  return offsets.map((offset, band) => offset + slopes[band]! * nr);
}

/**
 * Noise rating (NR) of a background noise.
 *
 * Equation: NR = the largest of (L - a) / b over the octaves. `text` rounds it to a whole number, `value` does not.
 * Units: octave band levels in dB: 7 bands from 63 Hz to 4 kHz, or 8 from 63 Hz or 9 from 31.5 Hz to 8 kHz. Silence, minus
 * infinity, is allowed.
 * Source: as in `noiseRatingCurve`, from memory.
 * Valid: NR 0 to NR 130; outside, there is no number.
 * Errors: ArgumentError for a wrong number of bands or a value that is no number.
 */
export function noiseRating(octaveLevels: readonly number[]): NoiseRating {
  requireBands('octave band level', octaveLevels, [7, 8, 9], { silence: true });
  const bands = octavesByCount(octaveLevels.length);
  const first = octaveLevels.length === 9 ? 0 : 1;
  const byBand = octaveLevels.map((level, band) => (level - offsets[first + band]!) / slopes[first + band]!);
  const number = Math.max(...byBand);
  const shared = { governingHz: bands[byBand.indexOf(number)]!, bands, byBand };
  if (number < lowest) return { value: null, text: `below NR ${lowest}`, ...shared, contour: null };
  if (number > highest) return { value: null, text: `above NR ${highest}`, ...shared, contour: null };
  const contour = noiseRatingCurve(number).slice(first, first + bands.length);
  return { value: number, text: `NR ${Math.round(number)}`, ...shared, contour };
}
