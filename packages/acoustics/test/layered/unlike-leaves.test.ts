import { describe, expect, it } from 'vitest';
import { bandTransmissionLoss } from '../../src/layered/band-transmission-loss.js';
import type { Layer } from '../../src/layered/layer.js';
import { defaultStiffnessSpread, unlikeLeaves } from '../../src/layered/unlike-leaves.js';
import { wallTransmissionLoss } from '../../src/layered/wall-transmission-loss.js';
import { roomAir as air, batt, board, glass, hardboard } from './stacks.js';

const field = { kind: 'finite', size: { width: 2, height: 1.2 } } as const;
const gap = { kind: 'air-gap', thickness: 0.012 } as const;
const moduli = (layers: readonly Layer[]) =>
  layers.flatMap((layer) => (layer.kind === 'plate' ? [layer.youngsModulus] : []));

describe('unlikeLeaves(layers, air, spread)', () => {
  it('leaves a wall of one leaf, and any wall without spread, as it is', () => {
    expect(unlikeLeaves([board, hardboard, batt], air, 0.1)).toEqual([board, hardboard, batt]);
    expect(unlikeLeaves([board, gap, board], air, 0)).toEqual([board, gap, board]);
    expect(unlikeLeaves([board, gap, { kind: 'limp-sheet', surfaceMass: 5 }], air, 0.1)[0]).toBe(board);
  });

  it('draws two leaves apart by the spread, all sheets of a leaf alike', () => {
    const found = unlikeLeaves([board, board, gap, board], air, 0.1);
    // The double leaf has the same critical frequency as the single one; the first of both counts as the lower.
    expect(moduli(found)).toEqual([2.5e9 * 1.05, 2.5e9 * 1.05, 2.5e9 * 0.95]);
    const three = moduli(unlikeLeaves([board, gap, board, gap, board], air, 0.2));
    expect(three).toEqual([2.5e9 * 1.1, 2.5e9, 2.5e9 * 0.9]);
  });

  it('makes the leaf that is stiffer for its mass stiffer still', () => {
    const found = unlikeLeaves([hardboard, gap, board], air, 0.1);
    expect(moduli(found)[1]).toBeGreaterThan(2.5e9);
    expect(moduli(found)[0]).toBeLessThan(4e9);
  });

  it('names a spread that cannot be', () => {
    expect(() => unlikeLeaves([board, gap, board], air, 1)).toThrow('spread of stiffness is 1');
    expect(() =>
      wallTransmissionLoss({ layers: [board], connections: [] }, { air, field, stiffnessSpread: -1 }),
    ).toThrow('spread of stiffness is -1');
  });
});

describe('wallTransmissionLoss(wall, { stiffnessSpread })', () => {
  const pane = [glass, gap, glass];
  const of = (stiffnessSpread?: number) =>
    wallTransmissionLoss(
      { layers: pane, connections: [] },
      { air, field, samplesPerBand: 8, ...(stiffnessSpread === undefined ? {} : { stiffnessSpread }) },
    ).total;

  it('is bandTransmissionLoss without spread', () => {
    expect(of(0)).toEqual(bandTransmissionLoss(pane, { air, field, samplesPerBand: 8 }));
  });

  it('is less transparent at the coincidence of two equal panes, and the same far below it', () => {
    const [alike, unlike] = [of(0), of()];
    expect(defaultStiffnessSpread).toBe(0.1);
    // 4 mm of glass have their coincidence near 3150 Hz.
    expect(Math.max(...[18, 19].map((band) => unlike[band]! - alike[band]!))).toBeGreaterThan(0.5);
    for (const band of [5, 8, 11]) expect(Math.abs(unlike[band]! - alike[band]!)).toBeLessThan(0.1);
  });
});
