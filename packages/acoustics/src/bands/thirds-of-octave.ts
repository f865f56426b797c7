import { ArgumentError } from '../errors/argument-error.js';
import { octaveBands } from './bands.js';

/**
 * Indices, on the working grid, of the three thirds that fill one octave.
 *
 * Units: `octaveIndex` counts in `octaveBands` from 0 (63 Hz) to 6 (4 kHz).
 * Errors: ArgumentError for an index that names no octave.
 *
 * @example
 * ```ts
 * import { thirdsOfOctave } from '@boothwright/acoustics/bands';
 *
 * thirdsOfOctave(1); // [3, 4, 5]
 * ```
 */
export function thirdsOfOctave(octaveIndex: number): number[] {
  if (!Number.isInteger(octaveIndex) || octaveIndex < 0 || octaveIndex >= octaveBands.length) {
    throw new ArgumentError('octave index', octaveIndex, `a whole number from 0 to ${octaveBands.length - 1}`);
  }
  return [3 * octaveIndex, 3 * octaveIndex + 1, 3 * octaveIndex + 2];
}
