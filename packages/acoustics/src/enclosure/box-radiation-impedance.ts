import type { Air } from '../air/air-properties.js';
import { requireNumber } from '../errors/require-number.js';
import { requireOneOf } from '../errors/require-one-of.js';
import { type Complex, complex, divide } from '../math/complex.js';

/** Share of all directions into which a box radiates: far from surfaces, on a floor, on a floor at a wall, in a corner. */
export const surroundingShares = { free: 1, floor: 1 / 2, edge: 1 / 4, corner: 1 / 8 } as const;
/** Names of the places at which a box may stand. */
export type Surrounding = keyof typeof surroundingShares;

/**
 * Pressure on the outside of a breathing box over its volume velocity, Pa s/m3: the air that the walls carry with them, and
 * what they radiate.
 *
 * Equation: Z = j omega rho/(Omega a (1 + j k a)), Omega = 4 pi times the share of directions, a = sqrt(S/Omega): a breathing
 * sphere whose free surface is S.
 * Units: S in m2, Hz. Per wall area the mass is rho a, about 1.3 kg/m2 for 14 m2 far from surfaces.
 * Source: radiation of a breathing sphere (common practice); other surroundings by mirror images (derived).
 * Valid for a box of compact shape whose walls move alike.
 * Errors: ArgumentError for an area or frequency that is not above 0, or a surrounding that is not known.
 */
export function boxRadiationImpedance(freeSurface: number, surrounding: Surrounding, hz: number, air: Air): Complex {
  requireNumber('free surface of the box', freeSurface, { above: 0, unit: 'm2' });
  requireNumber('frequency', hz, { above: 0, unit: 'Hz' });
  requireOneOf('surrounding of the box', surrounding, Object.keys(surroundingShares));
  const omega = 2 * Math.PI * hz;
  const angle = 4 * Math.PI * surroundingShares[surrounding];
  const radius = Math.sqrt(freeSurface / angle);
  return divide(complex(0, (omega * air.density) / (angle * radius)), complex(1, (omega * radius) / air.soundSpeed));
}
