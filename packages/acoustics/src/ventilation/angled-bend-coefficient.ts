import { requireNumber } from '../errors/require-number.js';

/** Angle in degrees and coefficient of mitred square ducts. Source: as in `angledBendCoefficient`. */
const table = [
  [0, 0],
  [20, 0.07],
  [30, 0.16],
  [45, 0.34],
  [60, 0.55],
  [75, 0.81],
  [90, 1.2],
] as const;

/**
 * Loss coefficient of a mitred turn by any angle, referred to the speed in the duct.
 *
 * Rule: up to a right angle straight lines between the printed angles; beyond it K_90 w(a)/w(90 deg), w(a) = 0.946 sin2(a/2) +
 * 2.047 sin4(a/2). Units: degrees.
 * Source: HVAC Systems Duct Design, 4th ed., Table A-7 D, rectangular mitred elbow, H/W = 1 (as transcribed); its round mitred
 * elbow has the same figures but 0.08 at 20 degrees. w is Weisbach's formula for mitred bends (from memory), scaled to meet
 * the table at the right angle (our own choice).
 * Valid: sharp turns up to 180 degrees with a straight run between them, Reynolds numbers above 100 000; at 10 000 the table adds 40 %.
 * Turns that follow at once lose more or less than their sum. Errors: ArgumentError for an angle that can't be.
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
  const [rightAngle, coefficient] = table[table.length - 1]!;
  if (angleDeg >= rightAngle) return (coefficient * weisbach(angleDeg)) / weisbach(rightAngle);
  const above = table.findIndex(([angle]) => angle > angleDeg);
  const [from, low] = table[above - 1]!;
  const [to, high] = table[above]!;
  return low + ((high - low) * (angleDeg - from)) / (to - from);
}

function weisbach(angleDeg: number): number {
  const square = Math.sin((angleDeg * Math.PI) / 360) ** 2;
  return 0.946 * square + 2.047 * square ** 2;
}
