import { ArgumentError } from '../errors/argument-error.js';
import { requireNumber } from '../errors/require-number.js';
import type { FrequencyWeighting } from './frequency-weighting.js';
import { weightedTotal } from './weighted-total.js';

/**
 * A spectrum of a given shape whose weighted total is a meter's reading.
 *
 * Equation: L_i = shape_i + reading - total(shape), the total weighted as the reading is.
 * Units: shape in dB, unweighted, 21 thirds; reading in dB with the stated weighting. Unknown bands stay unknown, and
 * the whole reading is then given to the known bands.
 * Source: energy identity.
 * Errors: ArgumentError for a wrong number of bands, a value that is no number, or a shape without any sound.
 */
export function scaleToReading<Level extends number | null>(
  shape: readonly Level[],
  reading: number,
  weighting: FrequencyWeighting,
): Level[] {
  requireNumber('reading', reading, { unit: 'dB' });
  const total = weightedTotal(shape, weighting);
  if (total === null || total === Number.NEGATIVE_INFINITY) {
    throw new ArgumentError('total of the spectrum shape', total, 'a level in at least one band');
  }
  const shift = reading - total;
  return shape.map((level) => (level === null ? level : level + shift) as Level);
}
