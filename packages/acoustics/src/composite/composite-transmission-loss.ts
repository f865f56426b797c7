import { ArgumentError } from '../errors/argument-error.js';
import { requireNumber } from '../errors/require-number.js';
import type { TransmissionLoss } from '../quantities/transmission-loss.js';

/** A part of a wall with its area in m2 and its transmission loss per band in dB. */
export type CompositeElement = { readonly area: number; readonly transmissionLoss: TransmissionLoss };

/**
 * Transmission loss of a wall of several parts, dB per band.
 *
 * Equation: R = -10 lg( Sum S_i 10^(-R_i/10) / Sum S_i ).
 * Source: common practice; M.J. Crocker: Engineering Acoustics (2021), Example 12.13 and EN 12354-3:2000 Annex F use it.
 * Valid when every part sees the same diffuse field; the parts are taken not to touch each other's vibration.
 * Errors: ArgumentError without elements, without area, or with lists of different length.
 *
 * @example
 * ```ts
 * import { compositeTransmissionLoss } from '@boothwright/acoustics/composite';
 * import { asTransmissionLoss } from '@boothwright/acoustics/quantities';
 *
 * // A wall of 50 dB with an open gap of a thousandth of its area.
 * compositeTransmissionLoss([
 *   { area: 10, transmissionLoss: asTransmissionLoss([50]) },
 *   { area: 0.01, transmissionLoss: asTransmissionLoss([0]) },
 * ]); // [30]
 * ```
 */
export function compositeTransmissionLoss(elements: readonly CompositeElement[]): TransmissionLoss {
  const first = elements[0];
  if (first === undefined) throw new ArgumentError('number of elements', 0, 'at least one');
  const bands = first.transmissionLoss.length;
  let total = 0;
  const power = new Array<number>(bands).fill(0);
  for (const { area, transmissionLoss } of elements) {
    requireNumber('area of an element', area, { atLeast: 0, unit: 'm2' });
    if (transmissionLoss.length !== bands) {
      throw new ArgumentError(
        'number of bands of an element',
        transmissionLoss.length,
        `${bands} as in the first element`,
      );
    }
    if (area === 0) continue;
    total += area;
    transmissionLoss.forEach((loss, band) => {
      // A tight part may let nothing through, so an infinite loss is one.
      if (Number.isNaN(loss))
        throw new ArgumentError(`transmission loss in band ${band + 1}`, loss, 'a number of decibels');
      power[band]! += area * 10 ** (-loss / 10);
    });
  }
  if (total === 0) throw new ArgumentError('area of all elements', 0, 'more than 0 m2');
  // Infinite where every part is tight, so not by `asTransmissionLoss`.
  return power.map((sum) => -10 * Math.log10(sum / total)) as readonly number[] as TransmissionLoss;
}
