import { type Complex, complex, divide, scale, squaredSize, subtract } from '../math/complex.js';

/**
 * J1(z)/J0(z) of a complex argument, the quotient that the friction in a round tube needs.
 *
 * Equation: continued fraction 1/(2/z - 1/(4/z - 1/(6/z - ...))), worked out from its tail. No units.
 * Source: Abramowitz & Stegun, Eq. 9.1.73 (from memory; held against the power series in the tests). Valid for every z
 * away from the zeros of J0, which lie on the real axis.
 */
export function besselRatio(z: Complex): Complex {
  if (squaredSize(z) === 0) return complex(0);
  const inverse = divide(complex(1), z);
  const last = 30 + Math.ceil(1.5 * Math.sqrt(squaredSize(z)));
  let tail = complex(0);
  for (let n = last; n >= 1; n--) tail = divide(complex(1), subtract(scale(inverse, 2 * n), tail));
  return tail;
}
