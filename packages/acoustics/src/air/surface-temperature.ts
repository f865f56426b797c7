import { requireNumber } from '../errors/require-number.js';

/** A wall between air inside and air outside. */
export type SurfaceConditions = {
  /** Air temperature inside and outside, degC. */
  readonly inside: number;
  readonly outside: number;
  /** Heat through the wall, W/(m2 K), air to air. */
  readonly transmittance: number;
  /** Resistance between the air inside and the surface, m2 K/W; 0.13 at a wall, 0.25 in a corner or behind furniture. */
  readonly surfaceResistance: number;
};

/**
 * Temperature of the inner surface of a wall, degC.
 *
 * Equation: T_i - U R_si (T_i - T_o). Units: degC, W/(m2 K), m2 K/W.
 * Source: steady heat through layers (common practice); the resistances named above are those of ISO 6946 and ISO 13788
 * (from memory). Valid: steady state, a plane wall; a thermal bridge is colder.
 * Errors: ArgumentError for a quantity that can't be, or a surface resistance that exceeds that of the whole wall.
 *
 * @example
 * ```ts
 * import { airProperties, condensationMargin, surfaceTemperature } from '@boothwright/acoustics/air';
 *
 * const air = airProperties({ temperature: 22, relativeHumidity: 0.6 });
 * const wall = { inside: 22, outside: 2, transmittance: 2, surfaceResistance: 0.13 };
 * surfaceTemperature(wall); // 16.8
 * // The wall is dry by this many kelvins.
 * condensationMargin(air, surfaceTemperature(wall)); // 2.9
 * ```
 */
export function surfaceTemperature({ inside, outside, transmittance, surfaceResistance }: SurfaceConditions): number {
  requireNumber('temperature inside', inside, { unit: 'degC' });
  requireNumber('temperature outside', outside, { unit: 'degC' });
  requireNumber('thermal transmittance', transmittance, { above: 0, unit: 'W/(m2 K)' });
  requireNumber('surface resistance', surfaceResistance, { atLeast: 0, atMost: 1 / transmittance, unit: 'm2 K/W' });
  return inside - transmittance * surfaceResistance * (inside - outside);
}
