import type { Air } from '../air/air-properties.js';
import { type BoxDimensions, listWalls, requireBox } from './box-geometry.js';
import { requireAdmittances, type WallAdmittances } from './require-admittance.js';

/**
 * Damping constant and shift of a mode of a box by walls of small admittance, to first order.
 *
 * Equation: delta = (c/2) sum over axes e_n Re(beta_0 + beta_1) / L, shift = -(c / (4 pi)) sum over axes
 * e_n Im(beta_0 + beta_1) / L, with e_n = 1 for order 0 along the axis and 2 otherwise.
 * Units: sides m, specific admittances; damping 1/s (pressure falls as exp(-delta t)), decay time T = 3 ln 10 / delta s,
 * shift Hz. An undamped mode has an infinite time.
 * Source: derived, first order of `dampedModes`. With no order 0 and small equal admittances, it is Sabine's time for the
 * field-incidence coefficient 8 beta.
 * Valid: k L |beta| well below 1 along order 0, and well below pi n along the others.
 * Errors: ArgumentError for a side or an admittance that can't be.
 */
export function wallDamping(
  size: BoxDimensions,
  order: readonly [number, number, number],
  admittances: WallAdmittances,
  air: Air,
): { readonly damping: number; readonly decayTime: number; readonly shift: number } {
  requireBox(size);
  const walls = listWalls(requireAdmittances(admittances));
  let re = 0;
  let im = 0;
  for (let axis = 0; axis < 3; axis++) {
    const weight = (order[axis] === 0 ? 1 : 2) / size[axis]!;
    re += weight * (walls[2 * axis]!.re + walls[2 * axis + 1]!.re);
    im += weight * (walls[2 * axis]!.im + walls[2 * axis + 1]!.im);
  }
  const damping = (air.soundSpeed / 2) * re;
  return { damping, decayTime: (3 * Math.LN10) / damping, shift: 0 - (air.soundSpeed / (4 * Math.PI)) * im };
}
