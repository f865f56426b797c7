import { ArgumentError } from '../errors/argument-error.js';

/**
 * Energy ratio of a level.
 *
 * Equation: E = 10^(L/10). Units: dB in, dimensionless ratio out. Minus infinity dB is zero energy.
 * Errors: ArgumentError for a level that is no number.
 */
export function energyOf(level: number): number {
  if (Number.isNaN(level)) throw new ArgumentError('level', level, 'a number of dB');
  return 10 ** (level / 10);
}
