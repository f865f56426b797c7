/** A part of a wall with its area in m2 and its transmission loss per band in dB. */
export type CompositeElement = { readonly area: number; readonly transmissionLoss: readonly number[] };

/**
 * Transmission loss of a wall of several parts, dB per band.
 *
 * Equation: R = -10 lg( Sum S_i 10^(-R_i/10) / Sum S_i ).
 * Source: common practice; M.J. Crocker: Engineering Acoustics (2021), Example 12.13 and EN 12354-3:2000 Annex F use it.
 * Valid when every part sees the same diffuse field; the parts are taken not to touch each other's vibration.
 * Errors: RangeError without elements, without area, or with lists of different length.
 */
export function compositeTransmissionLoss(elements: readonly CompositeElement[]): number[] {
  const first = elements[0];
  if (first === undefined) throw new RangeError('composite wall has no elements, expected at least one');
  const bands = first.transmissionLoss.length;
  let total = 0;
  const power = new Array<number>(bands).fill(0);
  for (const { area, transmissionLoss } of elements) {
    if (!(area >= 0 && Number.isFinite(area))) {
      throw new RangeError(`area of an element is ${area}, expected a number of m2 of 0 or more`);
    }
    if (transmissionLoss.length !== bands) {
      throw new RangeError(
        `an element has ${transmissionLoss.length} bands, expected ${bands} as in the first element`,
      );
    }
    if (area === 0) continue;
    total += area;
    transmissionLoss.forEach((loss, band) => {
      power[band]! += area * 10 ** (-loss / 10);
    });
  }
  if (total === 0) throw new RangeError('composite wall has no area, expected more than 0 m2');
  return power.map((sum) => -10 * Math.log10(sum / total));
}
