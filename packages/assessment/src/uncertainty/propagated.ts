/**
 * Half-width by band that stated tolerances cause in a predicted curve: every tolerance is applied alone, up and down,
 * half the difference is taken, and the contributions are combined as independent errors.
 *
 * Equation: u_b^2 = sum over i of ((y_b(x_i + t_i) - y_b(x_i - t_i)) / 2)^2.
 * Source: first-order law of propagation of uncertainty by finite differences (JCGM 100, from memory).
 * Valid: while the curve is nearly linear over the tolerance. Where a dip moves across a band, the result is rough.
 */
export function propagatedHalfWidth(
  alternatives: readonly { readonly up: readonly number[]; readonly down: readonly number[] }[],
  bands: number,
): number[] {
  return Array.from({ length: bands }, (_, band) =>
    Math.sqrt(
      alternatives.reduce((sum, { up, down }) => {
        const half = ((up[band] ?? 0) - (down[band] ?? 0)) / 2;
        return sum + half * half;
      }, 0),
    ),
  );
}
