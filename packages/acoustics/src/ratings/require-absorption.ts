import { requireBands } from '../bands/require-bands.js';
import { requireNumber } from '../errors/require-number.js';

/** Reverberation rooms give up to about 1.3 for thick samples (common practice); more is meant in percent. */
const largestMeasured = 1.5;

/** Rejects absorption coefficients that cannot be meant; those of a reverberation room may exceed 1. */
export function requireAbsorption(absorption: readonly number[], lengths: readonly number[]): void {
  requireBands('absorption coefficient', absorption, lengths, {});
  absorption.forEach((value, index) => {
    requireNumber(`absorption coefficient in band ${index + 1} of ${absorption.length}`, value, {
      atLeast: 0,
      atMost: largestMeasured,
    });
  });
}
