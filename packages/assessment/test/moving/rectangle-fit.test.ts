import { describe, expect, test } from 'vitest';
import { rectangleFit } from '../../src/moving/rectangle-fit.js';

/** Play by trying angles: the bounding box of the rectangle turned by `th` against the room for it. */
function byTrying(p: number, q: number, a: number, b: number): boolean {
  for (let index = 0; index <= 90000; index += 1) {
    const th = (index / 90000) * (Math.PI / 2);
    const wide = p * Math.cos(th) + q * Math.sin(th);
    const deep = p * Math.sin(th) + q * Math.cos(th);
    if (wide <= a + 1e-9 && deep <= b + 1e-9) return true;
  }
  return false;
}

describe('rectangleFit(one, other, width, depth)', () => {
  test('leaves the lesser of both differences where it fits straight', () => {
    expect(rectangleFit(0.6, 0.1, 1.2, 1)).toEqual({ play: 0.6, angled: false });
    expect(rectangleFit(0.1, 0.6, 1, 1.2).play).toBeCloseTo(0.6, 12);
  });

  test('a rectangle longer than the floor fits across its corners', () => {
    // 2 x 0.1 across 1.8 x 1: at 27 degrees, 2 cos + 0.1 sin = 1.827, at 30 degrees 1.782 and 1 + 0.087 = 1.087 > 1.
    expect(byTrying(2, 0.1, 1.8, 1)).toBe(false);
    expect(rectangleFit(2, 0.1, 1.8, 1).play).toBeLessThan(0);
    expect(byTrying(2, 0.05, 1.8, 1)).toBe(true);
    expect(rectangleFit(2, 0.05, 1.8, 1)).toMatchObject({ angled: true });
    expect(rectangleFit(2, 0.05, 1.8, 1).play).toBeGreaterThan(0);
  });

  test('agrees with trying every angle', () => {
    let angled = 0;
    for (const p of [1.05, 1.3, 1.55, 1.9]) {
      for (const q of [0.02, 0.1, 0.3, 0.7]) {
        for (const [a, b] of [
          [1, 1],
          [1.2, 1],
          [1.5, 0.6],
          [1.7, 1.1],
        ] as const) {
          const fit = rectangleFit(p, q, a, b);
          expect(fit.play >= 0, `${p} x ${q} in ${a} x ${b}`).toBe(byTrying(p, q, a, b));
          if (fit.play >= 0 && fit.angled) angled += 1;
        }
      }
    }
    expect(angled).toBeGreaterThan(3);
  });

  test('the play is zero where the shorter side is the least that holds it', () => {
    const [p, q, a] = [1.4, 0.2, 1.2];
    const th = Math.acos(a / Math.hypot(p, q)) + Math.atan(q / p);
    const least = p * Math.sin(th) + q * Math.cos(th);
    expect(rectangleFit(p, q, a, least).play).toBeCloseTo(0, 9);
  });
});
