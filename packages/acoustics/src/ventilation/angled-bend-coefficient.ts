import { requireNumber } from '../errors/require-number.js';
import { commonLossCoefficients } from './common-loss-coefficients.js';

/**
 * Loss coefficient of a mitred turn by any angle, referred to the speed in the duct.
 *
 * Equation: K_90 w(a)/w(90 deg), w(a) = 0.946 sin2(a/2) + 2.047 sin4(a/2), K_90 that of the square bend of
 * `commonLossCoefficients`. Units: degrees. Source: w is Weisbach's formula for mitred bends (from memory); it is scaled to the
 * right angle because square ducts lose more than the round ones that it was measured on (our own choice).
 * Valid: sharp turns up to 180 degrees with a straight run between them; turns that follow at once lose more or less than
 * their sum. Errors: ArgumentError for an angle that can't be.
 *
 * @example
 * ```ts
 * import { angledBendCoefficient } from '@boothwright/acoustics/ventilation';
 *
 * angledBendCoefficient(90); // 1.2
 * ```
 */
export function angledBendCoefficient(angleDeg: number): number {
  requireNumber('angle of the bend', angleDeg, { atLeast: 0, atMost: 180, unit: 'degrees' });
  return (commonLossCoefficients['square bend'] * weisbach(angleDeg)) / weisbach(90);
}

function weisbach(angleDeg: number): number {
  const square = Math.sin((angleDeg * Math.PI) / 360) ** 2;
  return 0.946 * square + 2.047 * square ** 2;
}
