import { ArgumentError } from '../errors/argument-error.js';
import { requireNumber } from '../errors/require-number.js';
import { levelOf } from '../levels/level-of.js';

/**
 * Loss of the sound that turns into one branch of a split, dB, alike in all bands.
 *
 * Equation: -10 lg(1 - ((sum S - S_m)/(sum S + S_m))^2) - 10 lg(S_i/sum S).
 * Units: areas m2 of the main duct, of all branches, and the index of the branch that is followed.
 * Source: M. Long, Architectural Acoustics, 2nd ed., 2014, equation 14.17 (as transcribed).
 * Valid: plane waves. Errors: ArgumentError for an area that can't be or an index without a branch.
 */
export function branchSplitLoss(mainArea: number, branchAreas: readonly number[], branch: number): number {
  requireNumber('main duct area', mainArea, { above: 0, unit: 'square metres' });
  for (const area of branchAreas) requireNumber('branch area', area, { above: 0, unit: 'square metres' });
  const own = branchAreas[branch];
  if (own === undefined) throw new ArgumentError('branch', branch, `an index below ${branchAreas.length}`);
  const sum = branchAreas.reduce((total, area) => total + area, 0);
  return -levelOf(1 - ((sum - mainArea) / (sum + mainArea)) ** 2) - levelOf(own / sum);
}
