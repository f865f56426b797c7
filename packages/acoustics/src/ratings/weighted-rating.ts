import { requireBands } from '../bands/require-bands.js';
import { adaptationSpectra } from './adaptation-spectra.js';
import { inTenths } from './in-tenths.js';
import { type ReferenceCurveFit, referenceCurveFit, thirdOctaveReference } from './reference-curve-fit.js';
import { spectrumLevelDifference } from './spectrum-level-difference.js';

/** A weighted single number with the fit that led to it. */
export type WeightedRating = Omit<ReferenceCurveFit, 'rating'> & {
  /** The weighted value, whole dB. */
  readonly rw: number;
  /** Spectrum adaptation terms, whole dB, 100 Hz to 3.15 kHz. */
  readonly c: number;
  readonly ctr: number;
};

/**
 * Weighted rating of 16 values from 100 Hz to 3.15 kHz, with its two adaptation terms: R'w, DnT,w or Dp,w as well as Rw.
 *
 * Rule: as in `weightedSoundReduction`, without the enlarged ranges.
 * Units: dB in, whole dB out.
 * Source: ISO 717-1 (reference curve, rules and spectra as transcribed; the printed page was not opened).
 * Errors: ArgumentError for a wrong number of bands or a value that is no number.
 */
export function weightedRating(values: readonly number[]): WeightedRating {
  requireBands('sound insulation', values, [16], {});
  const tenths = values.map(inTenths);
  const { rating, ...fit } = referenceCurveFit(tenths, 10, thirdOctaveReference);
  const term = (spectrum: 1 | 2) => {
    const difference = spectrumLevelDifference(
      tenths.map((value) => value / 10),
      adaptationSpectra[spectrum]['100To3150'],
    );
    // Not Math.round, which gives a negative zero just below zero.
    return Math.floor(difference + 0.5) - rating;
  };
  return { rw: rating, c: term(1), ctr: term(2), ...fit };
}
