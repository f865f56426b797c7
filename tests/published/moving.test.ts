import { describe, expect, test } from 'vitest';
import { cornerPlay } from '../../packages/assessment/src/moving/corner-turn.js';
import { rectangleFit } from '../../packages/assessment/src/moving/rectangle-fit.js';

describe('J. E. Wetzel, Rectangles in rectangles, Math. Mag. 73 (2000) 204-211', () => {
  test('9 x 4 does not fit in 8 x 6 although area, diagonal, perimeter and thickness would let it (p. 204)', () => {
    expect(9 * 4).toBeLessThan(8 * 6);
    expect(Math.hypot(9, 4)).toBeLessThan(Math.hypot(8, 6));
    expect(rectangleFit(9, 4, 8, 6).play).toBeLessThan(0);
  });

  test('agrees with the same condition in the form ((a+b)/(p+q))^2 + ((a-b)/(p-q))^2 >= 2 for p > a (as quoted)', () => {
    for (const p of [8.1, 8.5, 9, 9.4]) {
      for (const q of [0.2, 1, 2, 3, 4]) {
        for (const b of [4, 5, 6, 7, 8]) {
          const a = 8;
          if (q > b) continue;
          const fits = ((a + b) / (p + q)) ** 2 + ((a - b) / (p - q)) ** 2 >= 2;
          expect(rectangleFit(p, q, a, b).play >= 0, `${p} x ${q} in ${a} x ${b}`).toBe(fits);
        }
      }
    }
  });
});

describe('E. W. Weisstein, Moving Ladder Problem, MathWorld', () => {
  test('the longest ladder round a right-angled hallway of unit width is 2 sqrt 2', () => {
    expect(cornerPlay(2 * Math.SQRT2, 1e-9, 1, 1)).toBeCloseTo(0, 6);
    expect(cornerPlay(2 * Math.SQRT2 + 0.01, 1e-9, 1, 1)).toBeLessThan(0);
  });
});
