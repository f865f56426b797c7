import { ArgumentError } from '../errors/argument-error.js';
import type { Complex } from '../math/complex.js';
import { type BoxWalls, boxWallNames } from './box-geometry.js';

/** Specific admittance (rho c over the wall impedance) of each wall of a box at one frequency; a hard wall has zero. */
export type WallAdmittances = BoxWalls<Complex>;

/** Rejects an admittance that isn't finite or gives energy back. Errors: ArgumentError. */
export function requireAdmittances(walls: WallAdmittances): WallAdmittances {
  for (const name of boxWallNames) {
    const { re, im } = walls[name];
    if (!(re >= 0 && Number.isFinite(re) && Number.isFinite(im))) {
      throw new ArgumentError(
        `specific admittance of ${name}`,
        `${re} + ${im}j`,
        'finite numbers with a real part of 0 or more',
      );
    }
  }
  return walls;
}
