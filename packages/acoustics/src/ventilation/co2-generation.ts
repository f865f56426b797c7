import { requireNumber } from '../errors/require-number.js';

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
