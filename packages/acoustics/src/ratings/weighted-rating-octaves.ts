import { requireBands } from '../bands/require-bands.js';
import { sumLevels } from '../levels/sum-levels.js';
import { inTenths } from './in-tenths.js';
import { octaveReference, referenceCurveFit } from './reference-curve-fit.js';
import type { WeightedRating } from './weighted-rating.js';

/** A-weighted spectra No. 1 and No. 2 of ISO 717-1 in octaves, 125 Hz to 2 kHz, dB; from memory. */
const octaveSpectra = { 1: [-21, -14, -8, -5, -4], 2: [-14, -10, -7, -4, -6] } as const;

/**
 * Weighted rating of five octave values, with its two adaptation terms; for field measurements.
 *
 * Rule: as in `weightedRating`, with the reference curve 36, 45, 52, 55, 56 dB and a largest sum of 10.0 dB.
 * Units: dB in, 125 Hz to 2 kHz; whole dB out.
 * Source: ISO 717-1:2020 Table 3 and rules (as transcribed); the two octave spectra from memory.
 * Valid: for R', DnT and Dn measured in octaves. A laboratory Rw is found from thirds.
 * Errors: ArgumentError for a wrong number of bands or a value that is no number.
 */
export function weightedRatingOctaves(values: readonly number[]): WeightedRating {
  requireBands('sound insulation in octaves', values, [5], {});
  const tenths = values.map(inTenths);
  const { rating, ...fit } = referenceCurveFit(tenths, 10, octaveReference);
  const term = (spectrum: 1 | 2) =>
    Math.floor(-sumLevels(octaveSpectra[spectrum].map((level, band) => level - tenths[band]! / 10)) + 0.5) - rating;
  return { rw: rating, c: term(1), ctr: term(2), ...fit };
}
