import { octaveBands } from './bands.js';
import { requireBands } from './require-bands.js';

/**
 * Absorption coefficients in thirds from octaves, the same in the three thirds of an octave.
 *
 * Units: dimensionless; 7 octaves in, 21 thirds out.
 * Source: an assumption (common practice), as an octave says nothing of its inside; `octaveAbsorption` undoes it.
 * Errors: ArgumentError for a wrong number of bands or a value that is no number.
 */
export function octaveAbsorptionToThirds(absorption: readonly number[]): number[] {
  requireBands('octave absorption coefficient', absorption, [octaveBands.length], {});
  return absorption.flatMap((value) => [value, value, value]);
}
