import { describe, expect, test } from 'vitest';
import { cornerPlay, halfTurnPlay } from '../../src/moving/corner-turn.js';

describe('cornerPlay(long, thick, from, onto)', () => {
  test('is zero for the longest ladder (a^(2/3) + b^(2/3))^(3/2)', () => {
    const longest = (0.8 ** (2 / 3) + 1.1 ** (2 / 3)) ** 1.5;
    expect(cornerPlay(longest, 1e-9, 0.8, 1.1)).toBeCloseTo(0, 4);
    expect(cornerPlay(longest + 0.01, 1e-9, 0.8, 1.1)).toBeLessThan(0);
    expect(cornerPlay(longest - 0.01, 1e-9, 0.8, 1.1)).toBeGreaterThan(0);
  });

  test('a thickness t takes 2 t off the length in passages of the same width', () => {
    const longest = 2 * (0.9 * Math.SQRT2 - 0.1);
    expect(cornerPlay(longest, 0.1, 0.9, 0.9)).toBeCloseTo(0, 6);
    // A millimetre longer misses by half a millimetre across: sin 45 cos 45 = 1/2.
    expect(cornerPlay(longest + 0.002, 0.1, 0.9, 0.9)).toBeCloseTo(-0.001, 6);
  });

  test('what is no longer than the second passage is wide goes round without turning', () => {
    expect(cornerPlay(1, 0.7, 0.8, 1.1)).toBeCloseTo(0.1, 9);
  });

  test('what is thicker than a passage is wide does not go', () => {
    expect(cornerPlay(1.2, 0.9, 0.8, 1.1)).toBeLessThan(0);
  });

  test('agrees with moving the rectangle in small steps', () => {
    // Every angle with both outer corners on the outer walls: the corner must lie outside the rectangle or beside it.
    const goes = (length: number, thick: number, a: number, b: number) => {
      for (let index = 0; index <= 20000; index += 1) {
        const th = (index / 20000) * (Math.PI / 2);
        const [sin, cos] = [Math.sin(th), Math.cos(th)];
        // Points of the inner long side: none may be past the inner corner in both directions.
        for (let s = 0; s <= 60; s += 1) {
          const along = (s / 60) * length;
          const x = length * cos - along * cos + thick * sin;
          const y = along * sin + thick * cos;
          if (x > a + 1e-6 && y > b + 1e-6) return false;
        }
      }
      return true;
    };
    for (const [length, thick, a, b] of [
      [1.9, 0.1, 0.8, 0.9],
      [2.15, 0.1, 0.8, 0.9],
      [2.3, 0.1, 0.8, 0.9],
      [1.5, 0.4, 0.8, 0.9],
      [1.7, 0.4, 0.8, 0.9],
      [1.3, 0.6, 0.7, 1.6],
    ] as const) {
      expect(cornerPlay(length, thick, a, b) >= 0, `${length} x ${thick}`).toBe(goes(length, thick, a, b));
    }
  });
});

describe('halfTurnPlay(long, thick, from, onto)', () => {
  test('what is no longer than the landing is deep is carried across without being turned', () => {
    // Turned by 45 degrees it would need 0.79 / 2 + 0.75 = 1.145 m across the corner, and there are 0.8 sqrt 2 = 1.131 m.
    expect(halfTurnPlay(0.79, 0.75, 0.8, 0.9)).toBeCloseTo(0.01, 9);
  });

  test('what lies along the landing must be no longer than both flights are wide', () => {
    expect(halfTurnPlay(1.5, 0.05, 0.8, 0.8)).toBeCloseTo(Math.min(0.1, 0.8 * Math.SQRT2 - 0.75 - 0.05), 6);
    expect(halfTurnPlay(1.65, 0.05, 0.8, 0.8)).toBeCloseTo(-0.05, 9);
  });
});
