/** A complex number; the time convention of the whole package is exp(+j omega t). */
export type Complex = { readonly re: number; readonly im: number };

/** A complex number from its real and imaginary parts. */
export function complex(re: number, im = 0): Complex {
  return { re, im };
}

export function add(a: Complex, b: Complex): Complex {
  return { re: a.re + b.re, im: a.im + b.im };
}

export function subtract(a: Complex, b: Complex): Complex {
  return { re: a.re - b.re, im: a.im - b.im };
}

export function multiply(a: Complex, b: Complex): Complex {
  return { re: a.re * b.re - a.im * b.im, im: a.re * b.im + a.im * b.re };
}

export function divide(a: Complex, b: Complex): Complex {
  const size = b.re * b.re + b.im * b.im;
  return { re: (a.re * b.re + a.im * b.im) / size, im: (a.im * b.re - a.re * b.im) / size };
}

export function scale(a: Complex, factor: number): Complex {
  return { re: a.re * factor, im: a.im * factor };
}

/** The principal root, with a real part that is not negative. */
export function squareRoot(a: Complex): Complex {
  const size = Math.hypot(a.re, a.im);
  if (size === 0) return { re: 0, im: 0 };
  const re = Math.sqrt((size + Math.abs(a.re)) / 2);
  const im = Math.abs(a.im) / (2 * re);
  const sign = a.im < 0 ? -1 : 1;
  return a.re >= 0 ? { re, im: sign * im } : { re: im, im: sign * re };
}

export function sine(a: Complex): Complex {
  return { re: Math.sin(a.re) * Math.cosh(a.im), im: Math.cos(a.re) * Math.sinh(a.im) };
}

export function cosine(a: Complex): Complex {
  return { re: Math.cos(a.re) * Math.cosh(a.im), im: -Math.sin(a.re) * Math.sinh(a.im) };
}

/** Hyperbolic tangent, written so that large arguments do not overflow. */
export function hyperbolicTangent(a: Complex): Complex {
  if (Math.abs(a.re) > 20) return { re: Math.sign(a.re), im: 0 };
  const size = Math.cosh(2 * a.re) + Math.cos(2 * a.im);
  return { re: Math.sinh(2 * a.re) / size, im: Math.sin(2 * a.im) / size };
}

/** |a|^2 */
export function squaredSize(a: Complex): number {
  return a.re * a.re + a.im * a.im;
}
