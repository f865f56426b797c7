import { describe, expect, test } from 'vitest';
import { createMemo } from '../../src/memo/memo.js';
import { panelWay } from '../../src/moving/panel-way.js';
import { waysOf } from '../../src/moving/ways.js';
import { given, site } from '../fixtures/spec-builder.js';
import { passage } from './fixtures.js';

const tall = { width: 0.6, height: 2.18, thickness: 0.0945 };
const memo = createMemo();

function only(changes: Parameters<typeof site>[0], size = tall) {
  const [way] = waysOf(site(changes));
  if (way === undefined) throw new Error('no way');
  return panelWay(size, way, memo);
}

describe('a lift car of 1.00 x 1.20 x 2.10 m', () => {
  const lift = { width: given(1), depth: given(1.2), height: given(2.1) };

  test('takes a panel of 2.18 m only leaning', () => {
    const way = only({ lift });
    // Upright 80 mm too high; on its edge longer than the diagonal of the floor, sqrt(1 + 1.44) = 1.562 m.
    expect(way.passes).toBe('goes');
    expect(way.pose).toBe('leaning');
    const lean = (way.angleDeg * Math.PI) / 180;
    const height = 2.18 * Math.cos(lean) + 0.0945 * Math.sin(lean);
    const depth = 2.18 * Math.sin(lean) + 0.0945 * Math.cos(lean);
    // The panel is 0.6 m wide and stands along the 1.00 m side, its lean along the 1.20 m.
    expect(way.leftM).toBeCloseTo(Math.min(2.1 - height, 1.2 - depth, 0.4), 6);
    // At the best angle as much is left above as before it.
    expect(2.1 - height).toBeCloseTo(1.2 - depth, 3);
    expect(way.text).toContain('leaning');
  });

  test('takes a panel of 2.00 m upright, with 100 mm left', () => {
    const way = only({ lift }, { ...tall, height: 2 });
    expect(way).toMatchObject({ passes: 'goes', pose: 'upright' });
    expect(way.leftM).toBeCloseTo(0.1, 12);
  });

  test('takes a low panel across its corners where it is longer than the car', () => {
    const way = only({ lift: { ...lift, height: given(1.35) } }, { width: 1.3, height: 1.5, thickness: 0.02 });
    expect(way).toMatchObject({ diagonal: true, pose: 'on-its-side', passes: 'goes' });
    // 50 mm above it; at acos(1.2 / 1.5001) + atan(0.02 / 1.5) = 37.6 degrees it needs 1.5 sin + 0.02 cos = 0.932 m of 1 m.
    expect(way.leftM).toBeCloseTo(0.05, 9);
  });

  test('does not take a panel of 2.60 m, and says how long one could be', () => {
    const way = only({ lift }, { ...tall, height: 2.6 });
    expect(way.passes).toBe('does-not-go');
    expect(way.leftM).toBeLessThan(0);
    // Leaning: 2.10 m high and 1.20 m deep; the diagonal sqrt(2.1^2 + 1.2^2) = 2.419 m bounds it.
    expect(way.longestM).toBeGreaterThan(2.18);
    expect(way.longestM).toBeLessThan(2.419);
    expect(way.text).toMatch(/does not go upright, on its edge, flat, tilted in its plane or leaning/);
  });
});

describe('a stair of 0.80 m with headroom of 1.90 m at its quarter turn', () => {
  const stair = (onto?: number) => ({
    passages: [
      passage('stair', { width: 0.8, headroom: 1.9, turn: 'quarter', ...(onto === undefined ? {} : { onto }) }),
    ],
  });

  test('takes a panel of 2.00 m on its edge, not upright', () => {
    const way = only(stair(), { width: 0.6, height: 2, thickness: 0.1 });
    // At 45 degrees: 2 x 0.8 / sqrt 2 - 2 x 1/2 - 0.1 = 0.0314 m.
    expect(way).toMatchObject({ pose: 'on-its-side', passes: 'goes' });
    expect(way.leftM).toBeCloseTo(0.8 * Math.SQRT2 - 1 - 0.1, 6);
  });

  test('lets a thicker one no longer round on its edge', () => {
    const way = only(stair(), { width: 0.6, height: 2, thickness: 0.2 });
    // On its edge it misses by 0.8 sqrt 2 - 1 - 0.2 = -69 mm; upright by 100 mm.
    expect(way.pose).not.toBe('on-its-side');
  });

  test('stops a wide thick one, and says how long it could be', () => {
    const way = only(stair(), { width: 1.2, height: 2, thickness: 0.2 });
    expect(way.passes).toBe('does-not-go');
    expect(way.text).toContain('2.00 m against 1.90 m of height upright');
    // Upright it goes below 1.88 m, with 20 mm left, where the width of 1.2 m turns on the floor:
    // 0.8 sqrt 2 - 0.6 - 0.2 = 0.331 m.
    expect(way.longestM).toBeCloseTo(1.88, 2);
  });

  test('an upright panel needs no more than its width to turn', () => {
    const way = only(stair(), { width: 0.6, height: 1.8, thickness: 0.1 });
    expect(way).toMatchObject({ pose: 'upright', passes: 'goes' });
    expect(way.leftM).toBeCloseTo(0.1, 9);
  });
});

describe('a doorway', () => {
  const doorway = { width: given(0.76), height: given(1.98) };

  test('takes a panel of 2.18 m on its edge', () => {
    const way = only({ doorway });
    expect(way).toMatchObject({ pose: 'on-its-side', passes: 'goes', lengthM: 2.18 });
    expect(way.leftM).toBeCloseTo(Math.min(0.76 - 0.0945, 1.98 - 0.6), 9);
  });

  test('lets a panel through that is 5 mm lower only just', () => {
    const way = only({ doorway }, { width: 1.975, height: 1.975, thickness: 0.1 });
    // Leaning takes height off: 1.975 cos x + 0.1 sin x has its room in the 0.76 m.
    expect(way.pose).toBe('leaning');
    expect(way.passes).toBe('goes');
    expect(
      only({ doorway: { ...doorway, width: given(0.11) } }, { width: 1.975, height: 1.975, thickness: 0.1 }).passes,
    ).toBe('tight');
  });
});

test('a passage without a stated headroom is judged in plan', () => {
  const way = only({ passages: [passage('hall', { width: 0.9 })] });
  expect(way).toMatchObject({ pose: 'upright', passes: 'goes' });
  expect(way.leftM).toBeCloseTo(0.9 - 0.0945, 9);
});

test('the way in is lift, passages, doorway', () => {
  const ways = waysOf(
    site({
      doorway: { width: given(0.8), height: given(2) },
      lift: { width: given(1), depth: given(1), height: given(2) },
      passages: [passage('stair', { width: 0.8 })],
    }),
  );
  expect(ways.map(({ name }) => name)).toEqual(['lift', 'stair', 'doorway']);
});
