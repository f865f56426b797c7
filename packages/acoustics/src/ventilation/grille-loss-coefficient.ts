import { requireNumber } from '../errors/require-number.js';

/**
 * Loss coefficient of a thin grille or perforated face in a duct, referred to the speed on its whole face.
 *
 * Equation: (0.707 sqrt(1 - f) + 1 - f)^2/f^2, f the free share of the face; none at f = 1. Units: none.
 * Source: I. E. Idelchik, thin grids with sharp edges in a straight duct (from memory).
 * Valid: Reynolds numbers of an opening above some thousand. Bars with depth or rounded edges lose less, a filter or a
 * damper behind it more. What is lost where the air leaves the face is an outlet of its own.
 * Errors: ArgumentError for a share that can't be.
 *
 * @example
 * ```ts
 * import { grilleLossCoefficient } from '@boothwright/acoustics/ventilation';
 *
 * grilleLossCoefficient(0.6); // 2
 * ```
 */
export function grilleLossCoefficient(freeShare: number): number {
  requireNumber('free share of the grille', freeShare, { above: 0, atMost: 1 });
  const closed = 1 - freeShare;
  return ((Math.SQRT1_2 * Math.sqrt(closed) + closed) / freeShare) ** 2;
}
