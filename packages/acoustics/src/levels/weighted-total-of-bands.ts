import type { Band } from '../bands/bands.js';
import { requireBands } from '../bands/require-bands.js';
import { requireOneOf } from '../errors/require-one-of.js';
import { type FrequencyWeighting, frequencyWeighting, frequencyWeightings } from './frequency-weighting.js';
import { sumLevels } from './sum-levels.js';

/**
 * Weighted total level of a spectrum in any bands, as those of `octaveBandsBetween`.
 *
 * Equation: L = 10 lg of the sum of 10^((L_i + W(f_i))/10), W at the exact mid-band frequencies.
 * Units: dB; as many levels as bands. Silence, minus infinity, is allowed.
 * Source: IEC 61672-1 weightings; energy sum. In octaves the slope of the weighting inside a band is lost, which at the
 * lowest octaves can cost some decibels.
 * Errors: ArgumentError for a wrong number of bands or a value that is no number.
 */
export function weightedTotalOfBands(
  levels: readonly number[],
  bands: readonly Band[],
  kind: FrequencyWeighting,
): number {
  requireOneOf('frequency weighting', kind, frequencyWeightings);
  requireBands('band level', levels, [bands.length], { silence: true });
  return sumLevels(levels.map((level, index) => level + frequencyWeighting(kind, bands[index]!.exact)));
}
