import { ArgumentError } from '../errors/argument-error.js';
import { levelOf } from './level-of.js';
import { sumLevels } from './sum-levels.js';

/**
 * Energy mean of several levels.
 *
 * Equation: L = 10 lg of the mean of 10^(L_i/10). Units: dB.
 * Source: energy identity.
 * Errors: ArgumentError when there is no level, or one that is no number.
 *
 * @example
 * ```ts
 * import { meanLevel } from '@boothwright/acoustics/levels';
 *
 * meanLevel([60, 70]); // 67.4
 * ```
 */
export function meanLevel(levels: Iterable<number>): number {
  const all = [...levels];
  if (all.length === 0) throw new ArgumentError('number of levels to take the mean of', 0, 'one or more');
  return sumLevels(all) - levelOf(all.length);
}
