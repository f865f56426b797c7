import { ArgumentError } from '../errors/argument-error.js';
import { requireNumber } from '../errors/require-number.js';
import { requireNotNegative } from './require-positive.js';

/** One surface of a room in one frequency band. */
export type RoomSurface = {
  /** Appears in messages only. */
  readonly name?: string;
  /** m2 */
  readonly area: number;
  /** Absorption coefficient; a measured one may exceed 1, which only Sabine's equation takes. */
  readonly absorption: number;
};

/** The surfaces of a box, as the three pairs of opposite walls; each pair holds one or more surfaces. */
export type SurfacePairs = readonly [readonly RoomSurface[], readonly RoomSurface[], readonly RoomSurface[]];

/**
 * Total area and mean absorption coefficient weighted by area.
 *
 * Equation: S = sum S_i, a = sum S_i a_i / S. Units: m2; coefficient dimensionless.
 * `largestAbsorption` is the limit of a single coefficient: 1 where a formula takes ln(1 - a), infinity for Sabine's.
 * Source: common practice.
 * Errors: ArgumentError for a negative area or coefficient, a coefficient above the limit, no surface, or no area.
 */
export function meanRoomAbsorption(
  surfaces: readonly RoomSurface[],
  largestAbsorption: number,
): { readonly area: number; readonly absorption: number } {
  let area = 0;
  let absorbing = 0;
  for (let index = 0; index < surfaces.length; index++) {
    const surface = surfaces[index]!;
    const name = surface.name ?? `surface ${index + 1} of ${surfaces.length}`;
    requireNotNegative(`area of ${name}`, surface.area, 'square metres');
    if (largestAbsorption === Number.POSITIVE_INFINITY) requireNotNegative(`absorption of ${name}`, surface.absorption);
    else requireNumber(`absorption of ${name}`, surface.absorption, { atLeast: 0, atMost: largestAbsorption });
    area += surface.area;
    absorbing += surface.area * surface.absorption;
  }
  if (!(area > 0)) throw new ArgumentError('area of all surfaces', area, 'a number of m2 above 0');
  // Rounding may lift a mean of equal coefficients of 1 above 1.
  return { area, absorption: Math.min(absorbing / area, largestAbsorption) };
}
