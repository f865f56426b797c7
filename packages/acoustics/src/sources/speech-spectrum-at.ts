import { requireNumber } from '../errors/require-number.js';
import { speechSpectrum, type VocalEffort } from './speech-spectrum.js';

/**
 * Long-term speech spectrum at a distance in front of the lips in a free field.
 *
 * Equation: `speechSpectrum` less 20 lg r. Units: distance m; result dB in 21 thirds, unknown (null) below 160 Hz.
 * Source: as of `speechSpectrum`; spherical spreading (common practice).
 * Valid: from about 0.2 m, where the mouth is still a small source, outdoors or well inside the critical distance of a
 * room; straight ahead. Very near the lips levels rise less than this says.
 * Errors: ArgumentError for an effort that is not known or a distance that can't be.
 *
 * @example
 * ```ts
 * import { speechSpectrumAt } from '@boothwright/acoustics/sources';
 *
 * // A shout at 500 Hz, 0.5 m from the lips.
 * speechSpectrumAt('shout', 0.5)[10]; // 75.9
 * ```
 */
export function speechSpectrumAt(effort: VocalEffort, distance: number): (number | null)[] {
  requireNumber('distance from the lips', distance, { above: 0, unit: 'metres' });
  const spread = 20 * Math.log10(distance);
  return speechSpectrum(effort).map((level) => (level === null ? null : level - spread));
}
