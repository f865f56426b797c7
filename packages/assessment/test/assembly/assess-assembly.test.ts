import { airProperties } from '@boothwright/acoustics';
import { expect, it } from 'vitest';
import { assessAssembly } from '../../src/index.js';
import { createMemo } from '../../src/memo/memo.js';
import { practicalCeilingDb } from '../../src/uncertainty/model-uncertainty.js';
import {
  airGap,
  assembly,
  byMass,
  carpet,
  gypsum,
  plywood,
  sheet,
  shell,
  vinyl,
  wool,
} from '../fixtures/spec-builder.js';

const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });

it('assessAssembly(assembly) describes a framed wall', () => {
  const result = assessAssembly(shell, air, createMemo());
  expect(result.leaves).toBe(2);
  expect(result.thicknessM).toBeCloseTo(0.0945, 9);
  expect(result.surfaceMassKgPerM2).toBeCloseTo(20.67, 2);
  expect(result.resonancesHz).toHaveLength(1);
  expect(result.framePathDb).not.toBeNull();
  expect(result.layers.map((layer) => layer.text)).toEqual([
    'plywood 12 mm',
    'frame 45 mm x 70 mm every 600 mm, filled with wool 70 mm',
    'gypsum 12.5 mm',
  ]);
});

it('assessAssembly(assembly) gives the critical frequency of every plate, c^2/(2 pi) sqrt(m/B)', () => {
  const result = assessAssembly(shell, air, createMemo());
  const stiffness = (7e9 * 0.012 ** 3) / (12 * (1 - 0.09));
  const expected = (air.soundSpeed ** 2 / (2 * Math.PI)) * Math.sqrt((550 * 0.012) / stiffness);
  expect(result.criticalFrequenciesHz.map((entry) => entry.layer)).toEqual(['plywood 12 mm', 'gypsum 12.5 mm']);
  expect(result.criticalFrequenciesHz[0]?.hz).toBeCloseTo(expected, 3);
});

it('assessAssembly(assembly) works for a mat that is known by its mass alone', () => {
  const mat = assembly('mat', byMass(carpet, 4.9));
  const result = assessAssembly(mat, air, createMemo());
  expect(result.surfaceMassKgPerM2).toBe(4.9);
  expect(result.layers[0]?.text).toBe('carpet 4.9 kg/m2');
});

it('assessAssembly(assembly) rates a wall higher with no gap than with a thin one', () => {
  const rate = (gap: number) =>
    assessAssembly(assembly('wall', byMass(vinyl, 4.9), airGap(gap), sheet(plywood, 0.006)), air, createMemo()).ratings
      .stc;
  expect(rate(0)).toBeGreaterThan(rate(0.006));
});

it('assessAssembly(assembly) lets a promise above the practical ceiling fall back to it, and no other range grow', () => {
  const double = assembly(
    'double',
    sheet(gypsum, 0.0125),
    sheet(gypsum, 0.0125),
    sheet(wool, 0.2),
    airGap(0.1),
    sheet(gypsum, 0.0125),
    sheet(gypsum, 0.0125),
  );
  const result = assessAssembly(double, air, createMemo());
  const top = Math.max(...result.transmissionLossDb);
  const band = result.transmissionLossDb.indexOf(top);
  expect(top).toBeGreaterThan(80);
  expect(result.transmissionLossHighDb[band]).toBe(top);
  expect(result.transmissionLossLowDb[band]).toBeGreaterThan(practicalCeilingDb - 12);
  expect(result.transmissionLossLowDb[band]).toBeLessThan(practicalCeilingDb);
  expect(Math.max(...result.transmissionLossRangeDb)).toBeLessThan(15);
  result.transmissionLossDb.forEach((loss, index) => {
    expect(result.transmissionLossLowDb[index]).toBeLessThanOrEqual(loss);
    expect(result.transmissionLossHighDb[index]).toBeGreaterThanOrEqual(loss);
  });
});
