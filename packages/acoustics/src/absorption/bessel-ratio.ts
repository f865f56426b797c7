import { ArgumentError } from '../errors/argument-error.js';
import { requireNumber } from '../errors/require-number.js';
import { type Complex, complex, divide, scale, squaredSize, subtract } from '../math/complex.js';

/** Stands for infinity inside the fraction. */
const large = 1e30;

/**
 * J1(z)/J0(z) of a complex argument, the quotient that the friction in a round tube needs.
 *
 * Equation: continued fraction 1/(2/z - 1/(4/z - 1/(6/z - ...))), worked out from its tail. No units.
 * Source: Abramowitz & Stegun, Eq. 9.1.73 (from memory; held against the power series in the tests). Valid for every z
 * away from the zeros of J0, which lie on the real axis.
 * Errors: ArgumentError at a zero of J0, as far as numbers can tell, and for a part that is no number.
 */
export function besselRatio(z: Complex): Complex {
  requireNumber('real part of z', z.re);
  requireNumber('imaginary part of z', z.im);
  if (squaredSize(z) === 0) return complex(0);
  const inverse = divide(complex(1), z);
  const last = 30 + Math.ceil(1.5 * Math.sqrt(squaredSize(z)));
  let tail = complex(0);
  for (let n = last; n >= 1; n--) {
    const below = subtract(scale(inverse, 2 * n), tail);
    if (squaredSize(below) > 0) tail = divide(complex(1), below);
    else if (n === 1) throw new ArgumentError('z', `${z.re} + ${z.im}j`, 'no zero of J0');
    // A zero of one of the higher functions: the next step takes the inverse of what is large beyond measure.
    else tail = complex(large);
  }
  return tail;
}
