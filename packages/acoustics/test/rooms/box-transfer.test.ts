import { describe, expect, test } from 'vitest';
import { airProperties } from '../../src/air/air-properties.js';
import type { BoxWalls } from '../../src/rooms/box-geometry.js';
import { boxImageTransfer } from '../../src/rooms/box-image-transfer.js';
import { boxModalTransfer } from '../../src/rooms/box-modal-transfer.js';

const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
const path = { size: [1.8, 1.2, 2.1], source: [0.9, 0.75, 1.5], receiver: [0.9, 0.4, 1.42] } as const;
const hz = Array.from({ length: 39 }, (_, index) => 50 + 25 * index);
const all = <Value>(value: Value): BoxWalls<Value> => ({
  left: value,
  right: value,
  front: value,
  back: value,
  floor: value,
  ceiling: value,
});
const level = ({ re, im }: { re: number; im: number }) => 10 * Math.log10(re * re + im * im);

describe('boxModalTransfer and boxImageTransfer', () => {
  test('agree to 0.01 dB between hard walls in air that attenuates by 3 dB/m', () => {
    const modal = boxModalTransfer(
      path,
      hz,
      () => all({ re: 0, im: 0 }),
      () => 3,
      air,
    );
    const images = boxImageTransfer(
      path,
      hz,
      () => all({ kind: 'admittance' as const, admittance: { re: 0, im: 0 } }),
      () => 3,
      40,
      air,
    );
    for (const [index, value] of modal.entries())
      expect(Math.abs(level(value) - level(images[index]!))).toBeLessThan(0.01);
  });
  // The image sum uses plane-wave factors, which fail for grazing paths and below the first modes (79 Hz here): there
  // it is off by up to 6 dB, which is the model error of image sources, not of the modal sum.
  test.each([
    [0.05, 1, 1.5],
    [0.1, 0.8, 1.3],
    [0.2, 0.4, 1.1],
    [0.4, 0.3, 0.9],
  ])('agree for admittance %f within %f dB rms from 250 Hz to 1 kHz and %f dB from 50 Hz', (beta, high, full) => {
    const admittance = { re: beta, im: 0 };
    const modal = boxModalTransfer(
      path,
      hz,
      () => all(admittance),
      () => 0,
      air,
    );
    const images = boxImageTransfer(
      path,
      hz,
      () => all({ kind: 'admittance' as const, admittance }),
      () => 0,
      35,
      air,
    );
    const off = modal.map((value, index) => level(value) - level(images[index]!));
    const rms = (values: number[]) => Math.sqrt(values.reduce((sum, d) => sum + d * d, 0) / values.length);
    expect(rms(off.slice(8))).toBeLessThan(high);
    expect(rms(off)).toBeLessThan(full);
  });
  test('is reciprocal: source and receiver may change places', () => {
    const walls = () => ({ ...all({ re: 0.3, im: 0.2 }), floor: { re: 0.01, im: 0 }, left: { re: 0.8, im: -0.4 } });
    const there = boxModalTransfer(path, hz, walls, () => 0, air);
    const back = boxModalTransfer({ ...path, source: path.receiver, receiver: path.source }, hz, walls, () => 0, air);
    for (const [index, value] of there.entries()) {
      expect(Math.hypot(value.re - back[index]!.re, value.im - back[index]!.im)).toBeLessThan(
        1e-9 * Math.hypot(value.re, value.im),
      );
    }
  });
  test('does not depend on which axis is summed in closed form', () => {
    // Both distances are near each other, so that a hair decides which axis is taken.
    const walls = () => ({ ...all({ re: 0.2, im: 0.3 }), floor: { re: 0.02, im: 0 }, left: { re: 0.9, im: -0.4 } });
    const at = (dx: number, dz: number) =>
      boxModalTransfer(
        { size: path.size, source: [0.7, 0.6, 1.3], receiver: [0.7 + dx, 0.6, 1.3 - dz] },
        hz,
        walls,
        () => 0,
        air,
      );
    const one = at(0.4 + 1e-9, 0.4);
    for (const [index, value] of at(0.4, 0.4 + 1e-9).entries()) {
      expect(Math.abs(level(value) - level(one[index]!))).toBeLessThan(2e-3);
    }
  });
  test('falls to the free field where the walls take nearly all sound', () => {
    const walls = () => all({ kind: 'factor' as const, factor: { re: 0, im: 0 } });
    const [value] = boxImageTransfer(path, [500], walls, () => 0, 20, air);
    expect(Math.hypot(value!.re, value!.im)).toBeCloseTo(1 / Math.hypot(0.35, 0.08), 9);
  });
  test('reject what can not be', () => {
    expect(() =>
      boxModalTransfer(
        { ...path, source: [2, 0, 0] },
        hz,
        () => all({ re: 0, im: 0 }),
        () => 0,
        air,
      ),
    ).toThrow('place of the source along the width is 2');
    expect(() =>
      boxModalTransfer(
        path,
        hz,
        () => all({ re: -1, im: 0 }),
        () => 0,
        air,
      ),
    ).toThrow('specific admittance of left');
    expect(() =>
      boxModalTransfer(
        { ...path, source: path.receiver },
        hz,
        () => all({ re: 0, im: 0 }),
        () => 0,
        air,
      ),
    ).toThrow('0.02 or more');
    expect(() =>
      boxImageTransfer(
        path,
        hz,
        () => all({ kind: 'factor' as const, factor: { re: 1.2, im: 0 } }),
        () => 0,
        10,
        air,
      ),
    ).toThrow('reflection factor of left is 1.2');
  });
});
