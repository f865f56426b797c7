import { describe, expect, test } from 'vitest';
import { airProperties } from '../../src/air/air-properties.js';
import { boxModes } from '../../src/enclosure/box-modes.js';
import { type Complex, cosine, divide, multiply, sine, squareRoot, subtract } from '../../src/math/complex.js';
import { axisEigenvalues } from '../../src/rooms/axis-eigenvalues.js';
import type { BoxWalls } from '../../src/rooms/box-geometry.js';
import { dampedModes } from '../../src/rooms/damped-modes.js';
import { sabineTime } from '../../src/rooms/sabine-time.js';
import { wallDamping } from '../../src/rooms/wall-damping.js';

const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
const size = [1.8, 1.2, 2.1] as const;
const all = (value: Complex): BoxWalls<Complex> => ({
  left: value,
  right: value,
  front: value,
  back: value,
  floor: value,
  ceiling: value,
});

describe('axisEigenvalues(b0, b1, first, last)', () => {
  const j = (re: number, im: number): Complex => ({ re: -im, im: re });
  test.each([
    [j(0.1, 0), j(0.1, 0)],
    [j(5, 2), j(0.3, -4)],
    [j(40, 0), j(0, 0)],
    [j(300, 100), j(300, 100)],
    [j(3000, 0), j(2, 0)],
  ])('solves the equation with one root per order, %o and %o', (b0, b1) => {
    const roots = axisEigenvalues(b0, b1, 0, 30);
    const seen: Complex[] = [];
    for (let order = 0; order <= 30; order++) {
      const w = { re: roots[2 * order]!, im: roots[2 * order + 1]! };
      const z = squareRoot(w);
      const left = multiply(subtract(w, multiply(b0, b1)), divide(sine(z), z));
      const right = multiply({ re: b0.re + b1.re, im: b0.im + b1.im }, cosine(z));
      const off = subtract(left, right);
      const scale =
        Math.cosh(z.im) * (1 + Math.hypot(b0.re, b0.im)) * (1 + Math.hypot(b1.re, b1.im) + Math.hypot(w.re, w.im));
      expect(Math.hypot(off.re, off.im) / scale).toBeLessThan(1e-10);
      for (const other of seen) expect(Math.hypot(w.re - other.re, w.im - other.im)).toBeGreaterThan(1e-3);
      seen.push(w);
    }
  });
  test('tends to soft walls, z = n pi, for a very large admittance', () => {
    const roots = axisEigenvalues(j(1e5, 0), j(1e5, 0), 0, 5);
    const z = Array.from({ length: 6 }, (_, n) => Math.sqrt(roots[2 * n]!) / Math.PI).filter((value) => value < 8);
    for (const value of z) expect(Math.abs(value - Math.round(value))).toBeLessThan(1e-3);
  });
});

describe('dampedModes(size, admittances, upTo, air)', () => {
  test('are the modes of a hard box, undamped, without admittance', () => {
    const modes = dampedModes(size, () => all({ re: 0, im: 0 }), 300, air);
    const hard = boxModes(size, 300, air);
    expect(modes.length).toBe(hard.length);
    for (const [index, mode] of modes.entries()) {
      expect(mode.hz).toBeCloseTo(hard[index]!.hz, 9);
      expect(mode.decayTime).toBe(Number.POSITIVE_INFINITY);
    }
  });
  test('follow the first-order formula for a small admittance', () => {
    const walls = { ...all({ re: 0.002, im: 0.001 }), floor: { re: 0.001, im: -0.003 } };
    for (const mode of dampedModes(size, () => walls, 300, air)) {
      const first = wallDamping(size, mode.order, walls, air);
      expect(Math.abs(mode.damping! / first.damping - 1)).toBeLessThan(0.02);
      expect(Math.abs(mode.hz! - mode.hardHz - first.shift)).toBeLessThan(0.02);
    }
  });
  test("oblique modes decay with Sabine's time for alpha = 8 beta at a small admittance", () => {
    const beta = 1e-4;
    const { decayTime } = wallDamping(size, [2, 1, 3], all({ re: beta, im: 0 }), air);
    const surface = 2 * (1.8 * 1.2 + 1.8 * 2.1 + 1.2 * 2.1);
    expect(decayTime / sabineTime(1.8 * 1.2 * 2.1, surface * 8 * beta, 0, air)).toBeCloseTo(1, 12);
  });
  test('a spring-like wall lowers every mode, a mass-like wall lifts it', () => {
    for (const mode of dampedModes(size, () => all({ re: 0, im: 0.05 }), 250, air))
      expect(mode.hz).toBeLessThan(mode.hardHz);
    for (const mode of dampedModes(size, () => all({ re: 0, im: -0.02 }), 250, air)) {
      expect(mode.hz).toBeGreaterThan(mode.hardHz);
    }
  });
  test('a stronger wall damps more, up to a moderate admittance', () => {
    const at = (beta: number) =>
      dampedModes(size, () => all({ re: beta, im: 0 }), 200, air).map((mode) => mode.damping!);
    const weak = at(0.05);
    for (const [index, damping] of at(0.1).entries()) expect(damping).toBeGreaterThan(weak[index]!);
  });
});

describe('axisEigenvalues(b0, b1, 0, last) asked again', () => {
  test('gives the same roots after fewer, more and others were asked for, in an array of its own', () => {
    const [b0, b1] = [
      { re: -0.2, im: 0.9 },
      { re: 0.1, im: 2.3 },
    ];
    const few = axisEigenvalues(b0, b1, 0, 2);
    axisEigenvalues(b1, b0, 0, 9);
    const more = axisEigenvalues(b0, b1, 0, 9);
    expect([...more.slice(0, 6)]).toEqual([...few]);
    few.fill(0);
    more.fill(0);
    const single = [0, 4, 9].map((order) => [...axisEigenvalues(b0, b1, order, order)]);
    const again = axisEigenvalues(b0, b1, 0, 9);
    expect([0, 4, 9].map((order) => [again[2 * order], again[2 * order + 1]])).toEqual(single);
  });
});
