/** Nodes on -1 .. 1 and weights of a quadrature rule. */
export type QuadratureRule = { readonly nodes: readonly number[]; readonly weights: readonly number[] };

/**
 * The Gauss-Legendre rule with `count` points, exact for polynomials of degree 2 count - 1.
 *
 * Equation: nodes are the roots of the Legendre polynomial P_n, found by Newton's method from cos(pi (i - 1/4)/(n + 1/2));
 * weights 2 / ((1 - x^2) P_n'(x)^2).
 * Source: common practice, any textbook of numerical analysis.
 */
export function gaussLegendre(count: number): QuadratureRule {
  const nodes: number[] = [];
  const weights: number[] = [];
  for (let i = 1; i <= count; i++) {
    let x = Math.cos((Math.PI * (i - 0.25)) / (count + 0.5));
    let slope = 1;
    for (let pass = 0; pass < 100; pass++) {
      let before = 1;
      let value = x;
      for (let n = 2; n <= count; n++) [before, value] = [value, ((2 * n - 1) * x * value - (n - 1) * before) / n];
      slope = count === 1 ? 1 : (count * (x * value - before)) / (x * x - 1);
      const step = value / slope;
      x -= step;
      if (Math.abs(step) < 1e-15) break;
    }
    nodes.push(x);
    weights.push(2 / ((1 - x * x) * slope * slope));
  }
  return { nodes, weights };
}
