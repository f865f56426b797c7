import { describe, expect, it } from 'vitest';
import { besselJ0, besselJ1, besselY1Large } from '../../src/math/bessel.js';
import { struveH1 } from '../../src/math/struve.js';

/** J_n(x) = (1/pi) Integral_0^pi cos(n t - x sin t) dt; the trapezoidal rule converges faster than any power. */
function besselByIntegral(n: number, x: number): number {
  const count = 400;
  let sum = 0;
  for (let i = 0; i < count; i++) {
    const t = ((i + 0.5) * Math.PI) / count;
    sum += Math.cos(n * t - x * Math.sin(t)) / count;
  }
  return sum;
}

/** H1(x) = Sum (-1)^k (x/2)^(2k+2)/(Gamma(k + 3/2) Gamma(k + 5/2)), good while terms do not cancel. */
function struveBySeries(x: number): number {
  // Gamma(3/2) Gamma(5/2) = 3 pi/8.
  let term = (x / 2) ** 2 / ((3 * Math.PI) / 8);
  let sum = term;
  for (let k = 1; k < 120; k++) {
    term *= -((x / 2) ** 2) / ((k + 0.5) * (k + 1.5));
    sum += term;
  }
  return sum;
}

const places = [0, 0.001, 0.5, 1, 2.404825557695773, 5, 8, 11.9, 12, 12.1, 20, 50, 100];

describe('besselJ0(x) and besselJ1(x)', () => {
  it('agree with the integral representation to 1e-10', () => {
    for (const x of places) {
      expect(besselJ0(x)).toBeCloseTo(besselByIntegral(0, x), 9);
      expect(besselJ1(x)).toBeCloseTo(besselByIntegral(1, x), 9);
      expect(Math.abs(besselJ0(x) - besselByIntegral(0, x))).toBeLessThan(1e-10);
      expect(Math.abs(besselJ1(x) - besselByIntegral(1, x))).toBeLessThan(1e-10);
    }
  });

  it('are even and odd', () => {
    expect(besselJ0(-3)).toBe(besselJ0(3));
    expect(besselJ1(-3)).toBe(-besselJ1(3));
  });
});

describe('besselY1Large(x)', () => {
  it('fits J1 and J0 through the Wronskian J1 Y0 - J0 Y1 = 2/(pi x), with Y0 from the slope of Y1', () => {
    // Y0 = Y1' + Y1/x.
    const x = 15;
    const step = 1e-4;
    const slope = (besselY1Large(x + step) - besselY1Large(x - step)) / (2 * step);
    const y0 = slope + besselY1Large(x) / x;
    expect(besselJ1(x) * y0 - besselJ0(x) * besselY1Large(x)).toBeCloseTo(2 / (Math.PI * x), 8);
  });

  it('rejects arguments below its range', () => {
    expect(() => besselY1Large(3)).toThrow('argument of Y1 is 3');
  });
});

describe('struveH1(x)', () => {
  it('agrees with its power series to 1e-10 up to 12', () => {
    for (const x of [0, 0.01, 0.5, 1, 3, 6, 9, 12]) {
      expect(Math.abs(struveH1(x) - struveBySeries(x))).toBeLessThan(1e-10);
    }
  });

  it('is continuous where the asymptotic series takes over', () => {
    expect(Math.abs(struveH1(30 - 1e-9) - struveH1(30 + 1e-9))).toBeLessThan(2e-9);
  });

  it('rejects negative arguments', () => {
    expect(() => struveH1(-1)).toThrow('argument of the Struve function is -1');
  });
});
