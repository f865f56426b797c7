import { requireBands } from '../bands/require-bands.js';
import { noiseCriterionFamilies } from './noise-criterion-family.js';
import { octavesByCount } from './octaves-by-count.js';
import { type NoiseCriterion, tangency } from './tangency.js';

export type { NoiseCriterion } from './tangency.js';

/**
 * Noise criterion (NC) of a background noise, by the tangency method on the classic curves.
 *
 * Rule: in each octave band the level lies on one NC curve, between printed curves by linear interpolation; the rating
 * is the highest of these numbers. `text` rounds it to a whole number, `value` does not.
 * Units: octave band levels in dB, 63 Hz to 4 kHz (7 bands) or to 8 kHz (8). Minus infinity, silence, is allowed.
 * Source: ANSI/ASA S12.2 and M. J. Crocker, Engineering Acoustics, 2021, section 6 (tangency, as transcribed); curves as
 * in `noiseCriterionCurve`.
 * Valid: NC 15 to NC 70; outside, there is no number. The 16 and 31.5 Hz bands are not assessed, so rumble below 45 Hz
 * passes unseen. The speech-interference rule of ANSI/ASA S12.2 is in `noiseCriterionBySpeechInterference`.
 * Errors: ArgumentError for a wrong number of bands or a value that is no number.
 *
 * @example
 * ```ts
 * import { noiseCriterion } from '@boothwright/acoustics/criteria';
 *
 * noiseCriterion([60, 50, 42, 36, 30, 26, 22]).text; // 'NC 35'
 * ```
 */
export function noiseCriterion(octaveLevels: readonly number[]): NoiseCriterion {
  requireBands('octave band level', octaveLevels, [7, 8], { silence: true });
  return tangency(octaveLevels, octavesByCount(octaveLevels.length), noiseCriterionFamilies.classic.curves);
}
