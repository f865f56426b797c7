/** From here on the asymptotic series is the better one; below it the power series loses no more than four digits. */
const seriesLimit = 12;

/**
 * Bessel function of the first kind of order 0.
 *
 * Equation: power series below x = 12, Hankel's asymptotic expansion above. Argument and result have no unit.
 * Source: Abramowitz & Stegun, Handbook of Mathematical Functions, Eqs. 9.1.10 and 9.2.5 (from memory; checked in the
 * tests against the integral representation). Absolute error below 1e-10 for every real x.
 */
export function besselJ0(x: number): number {
  const size = Math.abs(x);
  if (size < seriesLimit) return powerSeries(0, size);
  // The first terms of the same expansion, written out because this function is called very often.
  const x8 = 1 / (8 * size);
  const z = x8 * x8;
  const p = 1 - z * (4.5 - z * (459.375 - z * (150077.8125 - z * (101905514.648 - z * 118130004864))));
  const q = -x8 * (1 - z * (37.5 - z * (7441.875 - z * (3623307.1875 - z * (3272299303.71 - z * 4735939285910)))));
  const phase = size - Math.PI / 4;
  return Math.sqrt(2 / (Math.PI * size)) * (p * Math.cos(phase) - q * Math.sin(phase));
}

/** Bessel function of the first kind of order 1; see `besselJ0`. */
export function besselJ1(x: number): number {
  const size = Math.abs(x);
  const value = size < seriesLimit ? powerSeries(1, size) : hankel(1, size).j;
  return x < 0 ? -value : value;
}

/**
 * Bessel function of the second kind of order 1 for x of 12 or more, by Hankel's expansion; see `besselJ0`.
 * Errors: RangeError below 12, where the expansion is not accurate.
 */
export function besselY1Large(x: number): number {
  if (!(x >= seriesLimit)) throw new RangeError(`argument of Y1 is ${x}, expected a number of ${seriesLimit} or more`);
  return hankel(1, x).y;
}

function powerSeries(order: 0 | 1, x: number): number {
  const quarter = (x * x) / 4;
  let term = order === 0 ? 1 : x / 2;
  let sum = term;
  for (let k = 1; k < 60; k++) {
    term *= -quarter / (k * (k + order));
    sum += term;
    if (Math.abs(term) < 1e-17) break;
  }
  return sum;
}

function hankel(order: 0 | 1, x: number): { j: number; y: number } {
  const mu = 4 * order * order;
  let p = 1;
  let q = 0;
  let term = 1;
  for (let k = 1; k < 60; k++) {
    const next = (term * (mu - (2 * k - 1) ** 2)) / (k * 8 * x);
    if (Math.abs(next) >= Math.abs(term)) break;
    term = next;
    if (k % 2 === 1) q += k % 4 === 1 ? term : -term;
    else p += k % 4 === 0 ? term : -term;
    if (Math.abs(term) < 1e-16) break;
  }
  const phase = x - (order / 2 + 0.25) * Math.PI;
  const size = Math.sqrt(2 / (Math.PI * x));
  const cos = Math.cos(phase);
  const sin = Math.sin(phase);
  return { j: size * (p * cos - q * sin), y: size * (p * sin + q * cos) };
}
