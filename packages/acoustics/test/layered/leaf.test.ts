import { describe, expect, it } from 'vitest';
import { ArgumentError } from '../../src/errors/argument-error.js';
import type { Layer } from '../../src/layered/layer.js';
import { leafAt } from '../../src/layered/leaf.js';
import { plateImpedance } from '../../src/panels/plate-impedance.js';
import { roomAir as air, board, hardboard } from './stacks.js';

describe('leafAt(layers, index, air)', () => {
  it('adds masses and stiffnesses of sheets that lie on each other', () => {
    const layers: Layer[] = [
      board,
      hardboard,
      { kind: 'limp-sheet', surfaceMass: 5 },
      { kind: 'air-gap', thickness: 0.1 },
      board,
    ];
    const leaf = leafAt(layers, 1, air);
    expect([leaf.first, leaf.last]).toEqual([0, 2]);
    expect(leaf.surfaceMass).toBeCloseTo(680 * 0.0125 + 900 * 0.0032 + 5, 9);
    expect(leaf.bendingStiffness).toBeCloseTo((2.5e9 * 0.0125 ** 3 + 4e9 * 0.0032 ** 3) / (12 * (1 - 0.3 ** 2)), 6);
  });

  it('shifts coincidence upwards by shear, to where the impedance of the plate along its face has no mass left', () => {
    const door = { ...board, thickness: 0.04, youngsModulus: 6e9, shearModulus: 3e8, lossFactor: 0 } as const;
    const leaf = leafAt([door], 0, air);
    expect(leaf.coincidenceHz / leaf.criticalHz).toBeGreaterThan(1.05);
    const reactance = (ratio: number) => plateImpedance(door, ratio * leaf.coincidenceHz, 1, air).im;
    expect(Math.abs(reactance(1) / reactance(0.5))).toBeLessThan(1e-9);
    expect(reactance(0.99)).toBeGreaterThan(0);
    expect(reactance(1.01)).toBeLessThan(0);
  });

  it('has no coincidence when its shear waves are slower than sound, nor without stiffness', () => {
    expect(leafAt([{ ...board, shearModulus: 1e5 }], 0, air).coincidenceHz).toBe(Number.POSITIVE_INFINITY);
    const limp = leafAt([{ kind: 'limp-sheet', surfaceMass: 5 }], 0, air);
    expect([limp.criticalHz, limp.coincidenceHz]).toEqual([Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY]);
  });

  it('takes absent layers as not there and rejects what is no leaf', () => {
    const layers: Layer[] = [board, { kind: 'air-gap', thickness: 0 }, hardboard, { kind: 'air-gap', thickness: 0.1 }];
    expect(leafAt(layers, 0, air).last).toBe(2);
    expect(() => leafAt(layers, 3, air)).toThrow(ArgumentError);
    expect(() => leafAt(layers, 3, air)).toThrow(
      'place of the studs is layer 4 of 4, expected a plate or a limp sheet',
    );
    expect(() => leafAt([{ kind: 'limp-sheet', surfaceMass: 0 }], 0, air)).toThrow('layer 1 without mass');
  });
});
