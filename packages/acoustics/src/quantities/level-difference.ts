import { requireNumber } from '../errors/require-number.js';
import type { BandSpectrum } from './band-spectrum.js';

/**
 * Level difference D by band, dB: the level in one room less that in the other. It depends on the element, its area and the
 * absorption of the receiving room.
 */
export type LevelDifference = BandSpectrum<'level difference'>;

/**
 * Takes numbers, dB by band, as level difference.
 * Errors: ArgumentError when a value is not a finite number.
 */
export function asLevelDifference(values: readonly number[]): LevelDifference {
  values.forEach((value, index) => {
    requireNumber(`level difference in band ${index + 1} of ${values.length}`, value, { unit: 'decibels' });
  });
  return values as LevelDifference;
}
