import { thirdOctaveBands } from '../bands/bands.js';
import { requireBands } from '../bands/require-bands.js';
import { type AdaptationRange, type AdaptationSpectrumNumber, adaptationSpectra } from './adaptation-spectra.js';
import { inTenths } from './in-tenths.js';
import type { PlainOrTransmissionLoss } from './plain-or-transmission-loss.js';
import { spectrumLevelDifference } from './spectrum-level-difference.js';
import { type WeightedRating, weightedRating } from './weighted-rating.js';

/** A weighted sound reduction index with all its spectrum adaptation terms, whole dB. */
export type WeightedSoundReduction = WeightedRating & {
  readonly c50To3150: number;
  readonly ctr50To3150: number;
  readonly c100To5000: number;
  readonly ctr100To5000: number;
  readonly c50To5000: number;
  readonly ctr50To5000: number;
};

/**
 * Weighted sound reduction index Rw with the spectrum adaptation terms C and Ctr, also over the enlarged ranges.
 *
 * Rule: the values, rounded to 0.1 dB, are compared with a reference curve from 100 Hz to 3.15 kHz that goes up in
 * steps of 1 dB as long as the sum of unfavourable deviations is 32.0 dB or less; Rw is its value at 500 Hz.
 * C_j = X_Aj - Rw with X_Aj = -10 lg of the sum of 10^((L_ij - R_i)/10), rounded to whole dB.
 * Units: dB in, whole dB out; 21 bands from 50 Hz to 5 kHz.
 * Source: ISO 717-1 (reference curve, rules and the spectra from 100 Hz to 3.15 kHz as transcribed; the enlarged
 * spectra from memory and confirmed, see `adaptationSpectra`).
 * Valid: for airborne sound insulation in third-octave bands; there is no limit on a single band.
 * Errors: ArgumentError for a wrong number of bands or a value that is no number.
 */
export function weightedSoundReduction<Values extends readonly number[]>(
  transmissionLoss: Values & PlainOrTransmissionLoss<Values>,
): WeightedSoundReduction {
  requireBands('transmission loss', transmissionLoss, [thirdOctaveBands.length], {});
  const rating = weightedRating(transmissionLoss.slice(3, 19));
  const rounded = transmissionLoss.map((value) => inTenths(value) / 10);
  const term = (number: AdaptationSpectrumNumber, range: AdaptationRange) => {
    const spectrum = adaptationSpectra[number][range];
    const values = rounded.slice(spectrum.first, spectrum.first + spectrum.levels.length);
    // Not Math.round, which gives a negative zero just below zero.
    return Math.floor(spectrumLevelDifference(values, spectrum) + 0.5) - rating.rw;
  };
  return {
    ...rating,
    c50To3150: term(1, '50To3150'),
    ctr50To3150: term(2, '50To3150'),
    c100To5000: term(1, '100To5000'),
    ctr100To5000: term(2, '100To5000'),
    c50To5000: term(1, '50To5000'),
    ctr50To5000: term(2, '50To5000'),
  };
}
