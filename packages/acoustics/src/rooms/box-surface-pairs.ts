import { type BoxDimensions, type BoxWalls, boxGeometry } from './box-geometry.js';
import type { SurfacePairs } from './room-surface.js';

/**
 * The six walls of a box as three pairs of surfaces, for the models of uneven absorption.
 *
 * Units: sides m, absorption coefficients dimensionless. Source: geometry.
 * Errors: ArgumentError for a side that isn't above zero.
 */
export function boxSurfacePairs(size: BoxDimensions, absorption: BoxWalls<number>): SurfacePairs {
  const { pairs } = boxGeometry(size);
  const pair = (axis: 0 | 1 | 2, first: keyof BoxWalls<number>, second: keyof BoxWalls<number>) =>
    [first, second].map((name) => ({
      name: name as string,
      area: pairs[axis] / 2,
      absorption: absorption[name as keyof BoxWalls<number>],
    }));
  return [pair(0, 'left', 'right'), pair(1, 'front', 'back'), pair(2, 'floor', 'ceiling')];
}
