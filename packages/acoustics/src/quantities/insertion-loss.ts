import { requireNumber } from '../errors/require-number.js';
import type { BandSpectrum } from './band-spectrum.js';

/**
 * Insertion loss by band, dB: the level at a place without a device less that with it.
 */
export type InsertionLoss = BandSpectrum<'insertion loss'>;

/**
 * Takes numbers, dB by band, as insertion loss.
 * Errors: ArgumentError when a value is not a finite number.
 */
export function asInsertionLoss(values: readonly number[]): InsertionLoss {
  values.forEach((value, index) => {
    requireNumber(`insertion loss in band ${index + 1} of ${values.length}`, value, { unit: 'decibels' });
  });
  return values as InsertionLoss;
}
