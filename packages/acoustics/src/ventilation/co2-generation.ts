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

/**
 * Carbon dioxide given off by one person, m3/s.
 *
 * Equation: V = RQ 0.00276 A_D M/(0.23 RQ + 0.77) L/s. Units: body surface m2, activity met, RQ none.
 * Source: ASTM D6245 and ASHRAE Fundamentals (as transcribed from public code); RQ 0.83 there.
 * Errors: ArgumentError for a quantity that can't be.
 */
export function co2Generation(surface: number, activity: number, respiratoryQuotient: number): number {
  requireNumber('body surface', surface, { above: 0 });
  requireNumber('activity', activity, { above: 0, unit: 'met' });
  requireNumber('respiratory quotient', respiratoryQuotient, { above: 0, atMost: 1.5 });
  return (1e-3 * respiratoryQuotient * 0.00276 * surface * activity) / (0.23 * respiratoryQuotient + 0.77);
}
