import { requireNotNegative, requirePositive } from './require-positive.js';

/**
 * Frequency below which single modes, not a reverberation time, describe a room.
 *
 * Equation: f = 2000 sqrt(T / V). Units: volume m3, reverberation time s; result Hz.
 * Source: M. R. Schroeder and K. H. Kuttruff, JASA 34, 1962, p. 76 (from memory), three modes within one half-power
 * bandwidth.
 * Valid: as a gradual limit, about an octave wide.
 * Errors: ArgumentError for a volume or a time that can't be.
 *
 * @example
 * ```ts
 * import { schroederFrequency } from '@boothwright/acoustics/rooms';
 *
 * schroederFrequency(50, 0.5); // 200
 * ```
 */
export function schroederFrequency(volume: number, time: number): number {
  requirePositive('room volume', volume, 'cubic metres');
  requireNotNegative('reverberation time', time, 'seconds');
  return 2000 * Math.sqrt(time / volume);
}
