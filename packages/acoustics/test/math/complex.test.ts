import { describe, expect, it } from 'vitest';
import {
  complex,
  cosine,
  divide,
  hyperbolicTangent,
  multiply,
  sine,
  squaredSize,
  squareRoot,
} from '../../src/math/complex.js';

describe('complex numbers', () => {
  it('squareRoot squares back and has a real part of 0 or more', () => {
    for (const z of [complex(3, 4), complex(-3, 4), complex(-3, -4), complex(0, -2), complex(-1, 0), complex(0, 0)]) {
      const root = squareRoot(z);
      const square = multiply(root, root);
      expect(root.re).toBeGreaterThanOrEqual(0);
      expect(square.re).toBeCloseTo(z.re, 12);
      expect(square.im).toBeCloseTo(z.im, 12);
    }
  });

  it('sine and cosine satisfy sin^2 + cos^2 = 1', () => {
    const z = complex(0.7, -1.3);
    const [s, c] = [sine(z), cosine(z)];
    const sum = { re: multiply(s, s).re + multiply(c, c).re, im: multiply(s, s).im + multiply(c, c).im };
    expect(sum.re).toBeCloseTo(1, 12);
    expect(sum.im).toBeCloseTo(0, 12);
  });

  it('hyperbolicTangent is -j tan(j z) and has the limit 1', () => {
    const z = complex(0.4, 0.9);
    const turned = complex(-z.im, z.re);
    const tangent = divide(sine(turned), cosine(turned));
    expect(hyperbolicTangent(z).re).toBeCloseTo(tangent.im, 12);
    expect(hyperbolicTangent(z).im).toBeCloseTo(-tangent.re, 12);
    expect(hyperbolicTangent(complex(500, 500))).toEqual({ re: 1, im: 0 });
  });

  it('squaredSize is the squared modulus', () => {
    expect(squaredSize(complex(3, -4))).toBe(25);
  });
});
