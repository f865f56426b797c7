import { airProperties } from '@boothwright/acoustics';
import { expect, it } from 'vitest';
import { constructionOf } from '../../src/assembly/construction.js';
import { resonancesOf } from '../../src/assembly/resonances.js';
import { airGap, byMass, panel, sheet, vinyl, wool } from '../fixtures/spec-builder.js';

const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
const of = (...layers: Parameters<typeof constructionOf>[0]) => resonancesOf(constructionOf(layers), air);

it('resonancesOf(construction, air) meets the mass-air-mass formula for an empty gap within 3 %', () => {
  // f0 = 60 sqrt((m1 + m2) / (m1 m2 d)), the trade form of the formula, here 4.9 and 3.04 kg/m2 with 50 mm.
  const expected = 60 * Math.sqrt((4.9 + 3.04) / (4.9 * 3.04 * 0.05));
  const [f0] = of(byMass(vinyl, 4.9), airGap(0.05), byMass(vinyl, 3.04));
  expect(Math.abs((f0 as number) / expected - 1)).toBeLessThan(0.03);
});

it('resonancesOf(construction, air) lies lower by the root of 1.4 for a gap full of fibre', () => {
  const [empty] = of(byMass(vinyl, 5), airGap(0.05), byMass(vinyl, 5));
  const [full] = of(byMass(vinyl, 5), sheet(wool, 0.05), byMass(vinyl, 5));
  expect((empty as number) / (full as number)).toBeCloseTo(Math.sqrt(1.4), 3);
});

it('resonancesOf(construction, air) has no answer for one leaf, and two for three leaves', () => {
  expect(of(byMass(vinyl, 5), airGap(0), byMass(vinyl, 5))).toEqual([]);
  // 8.5 / 17 / 8.5 kg/m2 with 100 mm twice: 65 and 92 Hz by the trade formula for the chain.
  const [low, high] = of(byMass(vinyl, 8.5), airGap(0.1), byMass(vinyl, 17), airGap(0.1), byMass(vinyl, 8.5));
  expect(low).toBeCloseTo(65, 0);
  expect(Math.abs((high as number) - 92)).toBeLessThan(1);
});

it('resonancesOf(construction, air) counts the mass of studs in no leaf', () => {
  const board = panel('board', 500, 5e9);
  const [f0] = of(sheet(board, 0.01), airGap(0.1), sheet(board, 0.01));
  expect(Math.abs((f0 as number) / (60 * Math.sqrt(10 / (25 * 0.1))) - 1)).toBeLessThan(0.03);
});
