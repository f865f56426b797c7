import { thirdOctaveBands } from '../bands/bands.js';
import { thirdOctaveBandsBetween } from '../bands/bands-between.js';
import { requireNumber } from '../errors/require-number.js';
import { requireOneOf } from '../errors/require-one-of.js';
import { weightedTotalOfBands } from '../levels/weighted-total-of-bands.js';

/** Spectrum of a microphone's own noise: alike in every hertz, or in every third. */
export type SelfNoiseShape = 'white' | 'pink';

/** The bands that an equivalent noise level covers, 20 Hz to 20 kHz. */
export const selfNoiseBands = thirdOctaveBandsBetween(20, 20_000);

/**
 * Third-octave spectrum of a microphone's own noise, dB re 20 uPa, from its equivalent noise level.
 *
 * Equation: levels alike in every hertz (`white`: +1 dB a third) or in every third (`pink`), scaled so that the A-weighted
 * sum over the 31 thirds from 20 Hz to 20 kHz is the equivalent level. The result holds the 21 thirds of the working grid
 * only, so its own A-weighted total is lower: by 3.1 dB for `white`, half of whose weighted energy lies above it, and by 0.9 dB for
 * `pink`.
 * Units: equivalent level dBA; result dB in 21 thirds. Source: IEC 60268-4 definition of the level (from memory); range of
 * the meter 20 Hz to 20 kHz (common practice).
 * Valid: the shape is an assumption, as a single figure says nothing of it; a reading with the quasi-peak weighting of
 * ITU-R 468 is 10 to 12 dB higher (from memory) and isn't meant.
 * Errors: ArgumentError for a level that is no number or a shape that is not known.
 */
export function microphoneSelfNoise(equivalentLevel: number, shape: SelfNoiseShape): number[] {
  return selfNoiseOf(equivalentLevel, shape, thirdOctaveBands);
}

/** The same in any third-octave bands. */
export function selfNoiseOf(
  equivalentLevel: number,
  shape: SelfNoiseShape,
  bands: readonly { readonly exact: number }[],
): number[] {
  requireNumber('equivalent noise level', equivalentLevel, { unit: 'decibels' });
  requireOneOf('shape of the noise', shape, ['white', 'pink']);
  const levelAt = (hz: number) => (shape === 'white' ? 10 * Math.log10(hz / 1000) : 0);
  const total = weightedTotalOfBands(
    selfNoiseBands.map(({ exact }) => levelAt(exact)),
    selfNoiseBands,
    'A',
  );
  return bands.map(({ exact }) => levelAt(exact) + equivalentLevel - total);
}
