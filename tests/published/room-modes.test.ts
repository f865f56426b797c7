// G. Ballou (ed.), Handbook for Sound Engineers, chapter 6, Tables 6-4 and 6-5 and the text beside them: a room of
// 16 x 12 x 8 ft at 1130 ft/s. Read on a public page of the book; the end of the tables is not on it, and the orders above
// the first are named by the text in whole Hz.
//
// Not found: a printed list of modes of a damped box. `dampedModes` is held against the same table in the limit of hard
// walls, where each axis has k_n = n pi/L, and against that limit's first-order formula by hand.
import { type Air, airProperties, axisEigenvalues, boxModes, dampedModes, wallDamping } from '@boothwright/acoustics';
import { describe, expect, test } from 'vitest';

const foot = 0.3048;
const air: Air = { ...airProperties({ temperature: 20, relativeHumidity: 0 }), soundSpeed: 1130 * foot };
const room = [16 * foot, 12 * foot, 8 * foot] as const;

const table64: readonly [string, number][] = [
  ['1,0,0', 35.31],
  ['2,0,0', 70.63],
  ['3,0,0', 105.94],
  ['0,1,0', 47.08],
  ['0,2,0', 94.17],
  ['0,3,0', 141.25],
  ['0,0,1', 70.63],
  ['0,0,2', 141.25],
];

const hardWalls = (admittance: number) => {
  const wall = { re: admittance, im: 0 };
  return () => ({ left: wall, right: wall, front: wall, back: wall, floor: wall, ceiling: wall });
};

describe('G. Ballou, Handbook for Sound Engineers, Table 6-4', () => {
  test.each(table64)(
    'mode %s at %f Hz within 0.01, of the hard box and of the damped one without damping',
    (order, hz) => {
      const hard = boxModes(room, 150, air).find((mode) => mode.order.join() === order)!;
      const damped = dampedModes(room, hardWalls(0), 150, air).find((mode) => mode.order.join() === order)!;
      expect(Math.abs(hard.hz - hz)).toBeLessThan(0.01);
      expect(Math.abs(damped.hz! - hz)).toBeLessThan(0.01);
      expect(damped.damping).toBe(0);
    },
  );
  test('of the axial modes one alone lies at 35 Hz, two at 70 Hz and three at 141, 282 Hz', () => {
    const axial = boxModes(room, 300, air).filter(({ order }) => order.filter((n) => n > 0).length === 1);
    const at = (hz: number) => axial.filter((mode) => Math.abs(mode.hz - hz) < 1).length;
    expect([35, 70, 141, 282].map(at)).toEqual([1, 2, 3, 3]);
  });
});

describe('limit of hard walls: k_n = n pi/L', () => {
  test('the eigenvalues of an axis without admittance are (n pi)^2, real, from order 0 on', () => {
    const roots = axisEigenvalues({ re: 0, im: 0 }, { re: 0, im: 0 }, 0, 12);
    for (let order = 0; order <= 12; order++) {
      expect(roots[2 * order]).toBeCloseTo((order * Math.PI) ** 2, 9);
      expect(roots[2 * order + 1]).toBeCloseTo(0, 9);
    }
  });
  test('as the admittance falls tenfold, the distance from the table and the damping fall tenfold, as the first-order formula says', () => {
    for (const [order] of table64) {
      const of = (admittance: number) =>
        dampedModes(room, hardWalls(admittance), 150, air).find((mode) => mode.order.join() === order)!;
      const [coarse, fine] = [of(1e-3), of(1e-4)];
      expect(coarse.damping! / fine.damping!).toBeCloseTo(10, 1);
      // delta = (c/2) sum over axes of eps Re(beta_0 + beta_1)/L, eps 1 for order 0 and 2 otherwise.
      const byHand =
        (air.soundSpeed / 2) * fine.order.reduce((sum, n, axis) => sum + ((n > 0 ? 2 : 1) * 2e-4) / room[axis]!, 0);
      expect(fine.damping! / byHand).toBeCloseTo(1, 3);
      const walls = hardWalls(1e-4)();
      expect(wallDamping(room, fine.order, walls, air).damping).toBeCloseTo(byHand, 9);
      expect(fine.decayTime! * byHand).toBeCloseTo(3 * Math.LN10, 2);
    }
  });
});
