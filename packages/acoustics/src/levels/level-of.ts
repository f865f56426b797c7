/**
 * Level of an energy ratio.
 *
 * Equation: L = 10 lg E. Units: energy ratio re the reference, dimensionless; level in dB. Zero energy is minus infinity.
 * Errors: RangeError for a negative energy or one that is no number.
 */
export function levelOf(energy: number): number {
  if (!(energy >= 0)) throw new RangeError(`energy is ${energy}, expected zero or more`);
  return 10 * Math.log10(energy);
}
