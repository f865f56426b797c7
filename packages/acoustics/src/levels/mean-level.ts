import { levelOf } from './level-of.js';
import { sumLevels } from './sum-levels.js';

/**
 * Energy mean of several levels.
 *
 * Equation: L = 10 lg of the mean of 10^(L_i/10). Units: dB.
 * Source: energy identity.
 * Errors: RangeError when there is no level, or one that is no number.
 */
export function meanLevel(levels: Iterable<number>): number {
  const all = [...levels];
  if (all.length === 0) throw new RangeError('no levels to take the mean of, expected one or more');
  return sumLevels(all) - levelOf(all.length);
}
