import { requireNumber } from '../errors/require-number.js';
import type { BandSpectrum } from './band-spectrum.js';

/**
 * Transmission loss R (sound reduction index) by band, dB: ten times the logarithm of incident over transmitted power.
 * A property of an element, whatever the rooms on its two sides.
 */
export type TransmissionLoss = BandSpectrum<'transmission loss'>;

/**
 * Takes numbers, dB by band, as transmission loss.
 * Errors: ArgumentError when a value is not a finite number.
 *
 * @example
 * ```ts
 * import { asTransmissionLoss } from '@boothwright/acoustics/quantities';
 *
 * asTransmissionLoss([30, 40]).length; // 2
 * asTransmissionLoss([30, Number.NaN]); // throws transmission loss in band 2 of 2 is NaN
 * ```
 */
export function asTransmissionLoss(values: readonly number[]): TransmissionLoss {
  values.forEach((value, index) => {
    requireNumber(`transmission loss in band ${index + 1} of ${values.length}`, value, { unit: 'decibels' });
  });
  return values as TransmissionLoss;
}
