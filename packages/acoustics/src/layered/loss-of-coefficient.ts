import type { TransmissionLoss } from '../quantities/transmission-loss.js';

/** The smallest normal number of 64-bit arithmetic; below it digits are lost one by one. */
const smallestNormal = 2.2250738585072014e-308;

/**
 * Transmission loss of a transmission coefficient, dB: R = -10 lg tau.
 *
 * tau counts at least as the smallest normal number, so that a layer which lets nothing through in the range of numbers
 * gives 3077 dB and a rating takes it: far beyond anything real either way.
 */
export function lossOfCoefficient(coefficient: number): number {
  return -10 * Math.log10(Math.max(coefficient, smallestNormal));
}

/** The same by band or frequency. */
export function lossesOfCoefficients(coefficients: readonly number[]): TransmissionLoss {
  return coefficients.map(lossOfCoefficient) as readonly number[] as TransmissionLoss;
}
