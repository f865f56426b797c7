import { requireNumber } from '../errors/require-number.js';

/** Coefficients of the polynomial by powers of the argument (from memory, see `holeInteraction`). */
const terms = [1, -1.4092, 0, 0.33818, 0, 0.06793, -0.02287, 0.03015, -0.01641];

/** Share of a square lattice that round holes fill when they touch. */
export const touchingHoles = Math.PI / 4;

/**
 * Factor, 1..0, by which neighbouring holes in a square grid shorten each other's end correction.
 *
 * Equation: 1 - 1.4092 x + 0.33818 x^3 + 0.06793 x^5 - 0.02287 x^6 + 0.03015 x^7 - 0.01641 x^8 with x the square root of
 * the open share of the area (0.88 diameter over spacing).
 * Source: V.A. Fok (1941), the reciprocal of his function (from memory; the tests hold it against the sum over the modes of
 * a square lattice of pistons). Valid to an open share of pi/4, where the holes touch.
 * Errors: ArgumentError for a share outside 0 to 1.
 */
export function holeInteraction(openArea: number): number {
  requireNumber('open area', openArea, { atLeast: 0, atMost: 1 });
  const x = Math.sqrt(openArea);
  return Math.max(
    0,
    terms.reduceRight((sum, term) => sum * x + term, 0),
  );
}
