import { requireNumber } from '../errors/require-number.js';
import { asTransmissionLoss, type TransmissionLoss } from '../quantities/transmission-loss.js';

/** m2; the reference area of an element-normalised level difference (ISO 10140, EN 12354-3, from memory). */
export const elementReferenceArea = 10;

/**
 * A small element known by its normalised level difference D_n,e, as transmission loss of an area, dB per band.
 *
 * Equation: R = D_n,e + 10 lg(S/A0), A0 = 10 m2: the element passes A0 10^(-D_n,e/10) whatever the area it is given.
 * Units: m2, dB. Source: EN 12354-3:2000, Annex F uses it (as transcribed).
 * Errors: ArgumentError for an area that is not above 0 or values that are no numbers.
 */
export function smallElementTransmissionLoss(normalisedDifference: readonly number[], area: number): TransmissionLoss {
  requireNumber('area of the element', area, { above: 0, unit: 'm2' });
  return asTransmissionLoss(normalisedDifference.map((value) => value + 10 * Math.log10(area / elementReferenceArea)));
}
