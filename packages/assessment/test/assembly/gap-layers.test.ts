import { expect, it } from 'vitest';
import { constructionOf } from '../../src/assembly/construction.js';
import { gapLayers, withDeeperGap, withFibre, withoutGap } from '../../src/assembly/gap-layers.js';
import { airGap, byMass, frame, gypsum, plywood, sheet, vinyl, wool } from '../fixtures/spec-builder.js';

const wall = [byMass(vinyl, 4.9), airGap(0.006), sheet(plywood, 0.012), frame(0.07, 0.05), sheet(gypsum, 0.0125)];

it('gapLayers(layers) lists what stands between each pair of leaves', () => {
  expect(gapLayers(wall)).toEqual([[1], [3]]);
  expect(gapLayers([airGap(0.01), sheet(plywood, 0.012), sheet(wool, 0.05)])).toEqual([]);
});

it('withoutGap(layers, gap) puts the two leaves in contact', () => {
  expect(constructionOf(withoutGap(wall, [1])).leaves).toHaveLength(2);
});

it('withDeeperGap(layers, gap, extra) adds to air or to the depth of a frame', () => {
  expect(constructionOf(withDeeperGap(wall, [1], 0.044)).gaps[0]?.air).toBeCloseTo(0.05, 9);
  const frameGap = constructionOf(withDeeperGap(wall, [3], 0.03)).gaps[1];
  expect(frameGap?.air).toBeCloseTo(0.05, 9);
  expect(frameGap?.fill).toBeCloseTo(0.05, 9);
});

it('withFibre(layers, gap) fills the air of one gap', () => {
  const gaps = constructionOf(withFibre(wall, [1])).gaps;
  expect(gaps[0]).toEqual({ air: 0, fill: 0.006 });
  expect(gaps[1]?.air).toBeCloseTo(0.02, 9);
});
