import { describe, expect, it } from 'vitest';
import { firstFit } from '../../src/build/first-fit.js';

const piece = (width: number, height: number, data: string) => ({ width, height, data });
const marks = (bins: ReturnType<typeof firstFit<string>>) => bins.map((bin) => bin.rects.map(({ data }) => data));

describe('firstFit(pieces, stock, gap, allowRotation)', () => {
  it('puts each piece on the first stock piece that has room, also after pieces of another size', () => {
    const pieces = [piece(60, 1, 'a'), piece(60, 1, 'b'), piece(50, 1, 'c'), piece(40, 1, 'd'), piece(40, 1, 'e')];
    expect(marks(firstFit(pieces, { width: 100, height: 1 }, 0, false))).toEqual([['a', 'd'], ['b', 'e'], ['c']]);
  });

  it('turns pieces only where it may', () => {
    const pieces = [piece(10, 30, 'a'), piece(30, 10, 'b')];
    expect(firstFit(pieces, { width: 30, height: 20 }, 0, true)).toHaveLength(1);
    const [bin] = firstFit([piece(10, 30, 'a')], { width: 30, height: 20 }, 0, true);
    expect(bin?.rects[0]).toMatchObject({ rot: true, width: 30, height: 10 });
  });

  it('keeps the cut of the saw between pieces', () => {
    const two = [piece(50, 10, 'a'), piece(50, 10, 'b')];
    expect(firstFit(two, { width: 100, height: 10 }, 0, false)).toHaveLength(1);
    expect(firstFit(two, { width: 100, height: 10 }, 1, false)).toHaveLength(2);
  });
});
