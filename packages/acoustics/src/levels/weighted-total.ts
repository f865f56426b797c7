import { thirdOctaveBands } from '../bands/bands.js';
import { requireBands } from '../bands/require-bands.js';
import { requireOneOf } from '../errors/require-one-of.js';
import { type FrequencyWeighting, frequencyWeighting, frequencyWeightings } from './frequency-weighting.js';
import { sumLevels } from './sum-levels.js';

/**
 * Weighted total level of a third-octave spectrum.
 *
 * Equation: L = 10 lg of the sum of 10^((L_i + W(f_i))/10), W at the exact mid-band frequencies.
 * Units: dB, 21 bands from 50 Hz to 5 kHz. Unknown bands (null) are skipped, so the total then is that of the known
 * bands only; null when every band is unknown.
 * Source: IEC 61672-1 weightings; energy sum. Sound outside 45 Hz to 5.6 kHz isn't counted.
 * Errors: ArgumentError for a wrong number of bands or a value that is no number.
 *
 * @example
 * ```ts
 * import { weightedTotal } from '@boothwright/acoustics/levels';
 * import { speechSpectrum } from '@boothwright/acoustics/sources';
 *
 * // A voice of normal effort at 1 m, dBA.
 * weightedTotal(speechSpectrum('normal'), 'A'); // 59.2
 * ```
 */
export function weightedTotal(levels: readonly (number | null)[], kind: FrequencyWeighting): number | null {
  requireOneOf('frequency weighting', kind, frequencyWeightings);
  requireBands('third-octave band level', levels, [thirdOctaveBands.length], { unknown: true, silence: true });
  const weighted: number[] = [];
  levels.forEach((level, index) => {
    if (level !== null) weighted.push(level + frequencyWeighting(kind, thirdOctaveBands[index]!.exact));
  });
  return weighted.length === 0 ? null : sumLevels(weighted);
}
