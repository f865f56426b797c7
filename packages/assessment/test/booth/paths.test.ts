import { airProperties } from '@boothwright/acoustics';
import { describe, expect, it } from 'vitest';
import { pathsOf } from '../../src/booth/paths.js';
import { createMemo } from '../../src/memo/memo.js';
import { booth, given, place, shell, vent } from '../fixtures/spec-builder.js';

const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
const memo = createMemo();

describe('pathsOf(booth)', () => {
  it('names every way in once, in a fixed order', () => {
    const ids = pathsOf(booth(shell, { vents: [vent('intake'), vent('exhaust')] }), air, memo).map(
      (path) => path.result.id,
    );
    expect(ids).toEqual([
      'face:front',
      'face:back',
      'face:left',
      'face:right',
      'face:roof',
      'face:floor',
      'door:entry',
      'door:entry:perimeter',
      'door:entry:threshold',
      'vent:intake',
      'vent:exhaust',
    ]);
  });

  it('measures the seals of a door as 2 h + w and w', () => {
    const paths = pathsOf(booth(), air, memo);
    const area = (id: string) => paths.find((path) => path.result.id === id)?.result.areaM2;
    expect(area('door:entry:perimeter')).toBeCloseTo((2 * 1.9 + 0.66) * 0.1e-3, 12);
    expect(area('door:entry:threshold')).toBeCloseTo(0.66 * 0.3e-3, 12);
  });

  it('drops a gap that is closed', () => {
    const doors = booth().doors.map((door) => ({ ...door, perimeterGap: given(0), thresholdGap: given(0) }));
    expect(pathsOf(booth(shell, { doors }), air, memo).filter((path) => path.leak)).toEqual([]);
  });

  it('counts a face without a build-up as an opening, but not the floor', () => {
    const faces = { ...booth().faces, roof: undefined, floor: undefined };
    const paths = pathsOf(booth(shell, { faces, linings: [] }), air, memo);
    const roof = paths.find((path) => path.result.id === 'face:roof');
    expect(roof?.result.transmissionLossDb).toEqual(Array(21).fill(0));
    expect(roof?.leak).toBe(true);
    expect(paths.some((path) => path.result.id === 'face:floor')).toBe(false);
  });

  it('keeps slits and holes with their own areas', () => {
    const named = { nameRange: place(), range: place(), face: 'back' as const, faceRange: place() };
    const paths = pathsOf(
      booth(shell, {
        slits: [{ ...named, name: 'joint', length: given(20), gap: given(0.0005), depth: given(0.09) }],
        holes: [{ ...named, name: 'cable', diameter: given(0.02), depth: given(0.09) }],
      }),
      air,
      memo,
    );
    expect(paths.find((path) => path.result.kind === 'slit')?.result.areaM2).toBeCloseTo(0.01, 12);
    expect(paths.find((path) => path.result.kind === 'hole')?.result.areaM2).toBeCloseTo((Math.PI / 4) * 4e-4, 12);
  });
});
