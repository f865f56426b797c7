import { ArgumentError } from '../errors/argument-error.js';

/**
 * Level of an energy ratio.
 *
 * Equation: L = 10 lg E. Units: energy ratio re the reference, dimensionless; level in dB. Zero energy is minus infinity.
 * Errors: ArgumentError for a negative energy or one that is no number.
 *
 * @example
 * ```ts
 * import { levelOf } from '@boothwright/acoustics/levels';
 *
 * levelOf(1000); // 30
 * ```
 */
export function levelOf(energy: number): number {
  if (!(energy >= 0)) throw new ArgumentError('energy', energy, 'zero or more');
  return 10 * Math.log10(energy);
}
