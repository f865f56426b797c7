import { describe, expect, it } from 'vitest';
import { type PieceIntegrand, PieceSum } from '../../src/math/integrate-adaptive.js';
import { Pieces } from '../../src/math/pieces.js';

/** A peak of the area pi on an unlimited range. */
function peakOf(centre: number, width: number): PieceIntegrand {
  return (places, count, out) => {
    for (let i = 0; i < count; i++) out[i] = width / (width * width + (places[i]! - centre) ** 2);
  };
}

function started(integrand: PieceIntegrand, pieces: Pieces): PieceSum {
  const sum = new PieceSum();
  sum.start(integrand, 1, pieces);
  return sum;
}

describe('Pieces', () => {
  it('takes in a peak by thirty points, however narrow it is', () => {
    for (const width of [1e-2, 1e-4, 1e-6]) {
      const pieces = new Pieces();
      pieces.addAround(0.4, width, 0, 0.4);
      pieces.addAround(0.4, width, 0.4, 1);
      const { values, evaluations } = started(peakOf(0.4, width), pieces).refined(0.05, 30);
      const exact = Math.atan(0.4 / width) + Math.atan(0.6 / width);
      expect(evaluations).toBe(30);
      expect(Math.abs(values[0]! / exact - 1), `${width}`).toBeLessThan(1e-3);
    }
  });

  it('bears a centre and a width that are not quite those of the peak', () => {
    const pieces = new Pieces();
    pieces.addAround(0.401, 3e-3, 0, 0.401);
    pieces.addAround(0.401, 3e-3, 0.401, 1);
    const { values, converged } = started(peakOf(0.4, 1e-3), pieces).refined(1e-3, 500);
    expect(converged).toBe(true);
    expect(values[0]! / (Math.atan(400) + Math.atan(600))).toBeCloseTo(1, 4);
  });

  it('leaves out intervals of no length', () => {
    const pieces = new Pieces();
    pieces.addPlain(0.5, 0.5);
    pieces.addAround(0.2, 0.1, 0.3, 0.3);
    expect(pieces.count).toBe(0);
  });
});
