import { requireNumber } from '../errors/require-number.js';

/**
 * Discharge coefficient of a doorway through which warm and cool air pass each other, for `doorwayExchange`.
 *
 * Equation: C_d = 0.40 + 0.0045 dT: the two streams drag at each other and mix, so that less passes than through a hole with one
 * stream, 0.6 to 0.65. Units: dT K; C_d none.
 * Source: ASHRAE Handbook, Fundamentals (1997), p. 25.13, Eq. (38), as quoted on a public page; after D. E. Kiel and D. J. Wilson,
 * ASHRAE Transactions 95, 1989 (from memory).
 * Valid: one opening into a space without another large one, 0.5 to 45 K, the range of the tracer measurements (abstract).
 * Errors: ArgumentError for a difference below 0 or above 100 K.
 *
 * @example
 * ```ts
 * import { doorwayDischargeCoefficient } from '@boothwright/acoustics/ventilation';
 *
 * doorwayDischargeCoefficient(2); // 0.409
 * ```
 */
export function doorwayDischargeCoefficient(difference: number): number {
  requireNumber('difference of temperature', difference, { atLeast: 0, atMost: 100, unit: 'kelvins' });
  return 0.4 + 0.0045 * difference;
}
