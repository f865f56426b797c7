import { thirdOctaveBands } from '../bands/bands.js';
import { requireBands } from '../bands/require-bands.js';
import { inTenths } from './in-tenths.js';
import type { PlainOrTransmissionLoss } from './plain-or-transmission-loss.js';
import { type ReferenceCurveFit, referenceCurveFit, thirdOctaveReference } from './reference-curve-fit.js';

/**
 * Weighted sound reduction index in steps of 0.1 dB, for statements of uncertainty and for small comparisons.
 *
 * Rule: as `weightedSoundReduction`, the reference curve going up in steps of 0.1 dB.
 * Units: dB; 21 bands from 50 Hz to 5 kHz, or the 16 from 100 Hz to 3.15 kHz.
 * Source: ISO 717-1:2020, as transcribed.
 * Errors: ArgumentError for a wrong number of bands or a value that is no number.
 */
export function weightedSoundReductionFine<Values extends readonly number[]>(
  transmissionLoss: Values & PlainOrTransmissionLoss<Values>,
): ReferenceCurveFit {
  requireBands('transmission loss', transmissionLoss, [thirdOctaveBands.length, 16], {});
  const used = transmissionLoss.length === 16 ? transmissionLoss : transmissionLoss.slice(3, 19);
  return referenceCurveFit(used.map(inTenths), 1, thirdOctaveReference);
}
