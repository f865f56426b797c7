import { describe, expect, it } from 'vitest';
import { integrateAdaptive } from '../../src/math/integrate-adaptive.js';

describe('integrateAdaptive(integrand, components, breaks, tolerance, maximumEvaluations)', () => {
  it('is exact for polynomials up to degree 22, which checks every node and weight', () => {
    for (let degree = 0; degree <= 22; degree += 2) {
      const { values } = integrateAdaptive(
        (x, out) => {
          out[0] = x ** degree;
        },
        1,
        [-1, 1],
        1,
        100,
      );
      expect(values[0]).toBeCloseTo(2 / (degree + 1), 13);
    }
  });

  it('integrates several components in one pass', () => {
    const { values, converged } = integrateAdaptive(
      (x, out) => {
        out[0] = Math.exp(x);
        out[1] = 1 / (1 + x * x);
      },
      2,
      [0, 0.3, 1],
      1e-9,
      1000,
    );
    expect(converged).toBe(true);
    expect(values[0]).toBeCloseTo(Math.E - 1, 9);
    expect(values[1]).toBeCloseTo(Math.PI / 4, 9);
  });

  it('resolves a narrow peak at a break', () => {
    const width = 1e-6;
    const { values, converged } = integrateAdaptive(
      (x, out) => {
        out[0] = width / (width * width + (x - 0.4) ** 2);
      },
      1,
      [0, 0.4 - 1e-4, 0.4, 0.4 + 1e-4, 1],
      1e-6,
      10_000,
    );
    expect(converged).toBe(true);
    expect(values[0]! / Math.PI).toBeCloseTo(1, 4);
  });

  it('says that it did not converge when its evaluations run out', () => {
    const { converged, evaluations } = integrateAdaptive(
      (x, out) => {
        out[0] = Math.sin(1000 * x) ** 2;
      },
      1,
      [0, 1],
      1e-9,
      100,
    );
    expect(converged).toBe(false);
    expect(evaluations).toBeLessThanOrEqual(100);
  });
});
