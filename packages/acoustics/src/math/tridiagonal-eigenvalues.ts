/**
 * Eigenvalues of a real symmetric tridiagonal matrix, smallest first.
 *
 * `diagonal` has n entries, `offDiagonal` n - 1.
 * Method: bisection on the count of negative pivots (Sturm sequence) between Gershgorin's bounds, to about 1e-14 of the
 * largest eigenvalue. Source: common practice, any textbook of numerical analysis.
 */
export function tridiagonalEigenvalues(diagonal: readonly number[], offDiagonal: readonly number[]): number[] {
  const size = diagonal.length;
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < size; i++) {
    const reach = Math.abs(offDiagonal[i - 1] ?? 0) + Math.abs(offDiagonal[i] ?? 0);
    low = Math.min(low, diagonal[i]! - reach);
    high = Math.max(high, diagonal[i]! + reach);
  }
  const tiny = Number.MIN_VALUE + 1e-300 * Math.abs(high);
  const countBelow = (x: number): number => {
    let count = 0;
    let pivot = 1;
    for (let i = 0; i < size; i++) {
      const off = i === 0 ? 0 : offDiagonal[i - 1]!;
      pivot = diagonal[i]! - x - (off * off) / pivot;
      if (pivot === 0) pivot = tiny;
      if (pivot < 0) count++;
    }
    return count;
  };
  return diagonal.map((_, index) => {
    let a = low;
    let b = high;
    for (let pass = 0; pass < 100 && b - a > 1e-15 * Math.max(Math.abs(low), Math.abs(high)); pass++) {
      const middle = (a + b) / 2;
      if (countBelow(middle) > index) b = middle;
      else a = middle;
    }
    return (a + b) / 2;
  });
}
