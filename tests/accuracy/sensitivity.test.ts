import path from 'node:path';
import { expect, it } from 'vitest';
import { constructionsOf } from './constructions.js';
import { groups, insulationCurves, summaryOf } from './insulation-results.js';
import { readOpenData } from './open-data.js';
import { biasAndRms, errorsWith, variants } from './sensitivity.js';

const data = readOpenData(path.resolve(import.meta.dirname, '../..'));
const constructions = constructionsOf(data);

it('every variant changes some construction and leaves the number of layers and ties', () => {
  for (const { words, change } of variants) {
    const changed = constructions.map(change);
    expect(
      changed.some((each, index) => each !== constructions[index]),
      words,
    ).toBe(true);
    changed.forEach((each, index) => {
      expect(each.layers).toHaveLength(constructions[index]!.layers.length);
      expect(each.connections).toHaveLength(constructions[index]!.connections.length);
    });
  }
});

it('a change of nothing gives the figures of the report', () => {
  const curves = insulationCurves(data);
  const group = groups[0]!;
  const same = errorsWith(curves, { words: 'nothing', change: (construction) => ({ ...construction }) });
  const { bias, rms } = biasAndRms(curves, same, group);
  expect(bias).toBeCloseTo(summaryOf(curves, group).bias, 12);
  expect(rms).toBeCloseTo(summaryOf(curves, group).rms, 12);
});
