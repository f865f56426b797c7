import { requireNumber } from '../errors/require-number.js';

/**
 * A-weighted level of a talker at 1 m who hears noise, dB: the Lombard effect.
 *
 * Equation: 50 dBA in quiet; above 40 dBA of noise, 3 dB more for each 10 dB of it. Units: dBA.
 * Source: van Heusden, Plomp and Pols, Effect of ambient noise on the vocal output, Applied Acoustics 12, 1979 (as
 * transcribed from its abstract).
 * Valid: conversation, no performance; how far above 40 dBA the straight line holds wasn't read. Headphones that carry the
 * noise count as noise. Errors: ArgumentError for a level that is no number.
 *
 * @example
 * ```ts
 * import { speechLevelInNoise } from '@boothwright/acoustics/sources';
 *
 * speechLevelInNoise(60); // 56
 * ```
 */
export function speechLevelInNoise(noise: number): number {
  requireNumber('noise level', noise, { unit: 'dBA' });
  return 50 + 0.3 * Math.max(0, noise - 40);
}
