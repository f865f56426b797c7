import { requireNumber } from '../errors/require-number.js';

/**
 * Surface of a body, m2: 0.20247 h^0.725 m^0.425. Units: height m, mass kg.
 * Source: D. and E. F. Du Bois, as in ASTM D6245 (as transcribed). Errors: ArgumentError for a quantity that can't be.
 */
export function bodySurfaceArea(height: number, mass: number): number {
  requireNumber('body height', height, { above: 0 });
  requireNumber('body mass', mass, { above: 0 });
  return 0.20247 * height ** 0.725 * mass ** 0.425;
}
