import { requireBands } from '../bands/require-bands.js';
import { requireNumber } from '../errors/require-number.js';

/** Rejects absorption coefficients that cannot be meant; those of a reverberation room may exceed 1. */
export function requireAbsorption(absorption: readonly number[], lengths: readonly number[]): void {
  requireBands('absorption coefficient', absorption, lengths, {});
  absorption.forEach((value, index) => {
    requireNumber(`absorption coefficient in band ${index + 1} of ${absorption.length}`, value, { atLeast: 0 });
  });
}
