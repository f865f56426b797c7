import { describe, expect, it } from 'vitest';
import { tridiagonalEigenvalues } from '../../src/math/tridiagonal-eigenvalues.js';

describe('tridiagonalEigenvalues(diagonal, offDiagonal)', () => {
  it('of the chain 2, -1 are 2 - 2 cos(k pi/(n + 1))', () => {
    const n = 7;
    const found = tridiagonalEigenvalues(new Array(n).fill(2), new Array(n - 1).fill(-1));
    found.forEach((value, i) => {
      expect(value).toBeCloseTo(2 - 2 * Math.cos(((i + 1) * Math.PI) / (n + 1)), 12);
    });
  });

  it('of a diagonal matrix are its entries in order', () => {
    const found = tridiagonalEigenvalues([3, 1, 2], [0, 0]);
    [1, 2, 3].forEach((value, i) => {
      expect(found[i]).toBeCloseTo(value, 12);
    });
  });

  it('of one number is that number, of none is none', () => {
    expect(tridiagonalEigenvalues([5], [])[0]).toBeCloseTo(5, 12);
    expect(tridiagonalEigenvalues([], [])).toEqual([]);
  });
});
