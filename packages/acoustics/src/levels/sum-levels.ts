import { energyOf } from './energy-of.js';
import { levelOf } from './level-of.js';

/**
 * Level of several incoherent sounds together.
 *
 * Equation: L = 10 lg of the sum of 10^(L_i/10). Units: dB. No level at all is silence, minus infinity.
 * Source: energy identity. Valid for sounds without a fixed phase relation.
 * Errors: ArgumentError for a level that is no number.
 *
 * @example
 * ```ts
 * import { sumLevels } from '@boothwright/acoustics/levels';
 *
 * sumLevels([60, 60]); // 63
 * sumLevels([]); // -Infinity
 * ```
 */
export function sumLevels(levels: Iterable<number>): number {
  let energy = 0;
  for (const level of levels) energy += energyOf(level);
  return levelOf(energy);
}
