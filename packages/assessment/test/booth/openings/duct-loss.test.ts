import { airProperties } from '@boothwright/acoustics';
import { expect, it } from 'vitest';
import { ductPathLoss } from '../../../src/booth/openings/duct-loss.js';
import { ventPath } from '../../../src/booth/openings/vent-path.js';
import { given, octaves, sheet, vent, wool } from '../../fixtures/spec-builder.js';

const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });

it('ductPathLoss(vent) grows with the lined run and with bends', () => {
  const short = ductPathLoss(vent('a', { bends: given(0) }), air).alongDuct;
  const long = ductPathLoss(vent('a', { bends: given(0), run: given(2.4) }), air).alongDuct;
  const bent = ductPathLoss(vent('a', { bends: given(2) }), air).alongDuct;
  expect(long[13]).toBeGreaterThan((short[13] as number) + 5);
  expect(bent[16]).toBeGreaterThan(short[16] as number);
});

it('ductPathLoss(vent) counts nothing for a bare run', () => {
  const bare = vent('a', { lining: undefined, bends: given(0) });
  const { alongDuct, endReflection } = ductPathLoss(bare, air);
  expect(alongDuct).toEqual(endReflection);
});

it('ductPathLoss(vent) lets a stated insertion loss replace the computed one in its bands only', () => {
  const stated = vent('a', { insertionLoss: octaves([null, null, null, 25, null, null, null]) });
  const computed = ductPathLoss(vent('a'), air);
  const { alongDuct, stated: flags } = ductPathLoss(stated, air);
  expect(alongDuct.slice(9, 12)).toEqual([25, 25, 25]);
  expect(flags[9]).toBe(true);
  expect(alongDuct[13]).toBe(computed.alongDuct[13]);
});

it('ventPath(vent) is referred to the clear cross-section and takes a stated loss as it stands', () => {
  const path = ventPath(vent('a', { insertionLoss: octaves([20, 20, 20, 20, 20, 20, 20]) }), air);
  expect(path.result.areaM2).toBeCloseTo((Math.PI / 4) * 0.125 ** 2, 12);
  expect(path.result.transmissionLossDb).toEqual(Array(21).fill(20));
});

it('ventPath(vent) of a rectangular duct has its own area', () => {
  const duct = { kind: 'rectangular' as const, width: given(0.1), height: given(0.15) };
  expect(ventPath(vent('a', { duct, lining: sheet(wool, 0.025) }), air).result.areaM2).toBeCloseTo(0.015, 12);
});

it('ventPath(vent) carries the remarks of the tables, and its range widens beyond them', () => {
  const round = (diameter: number) =>
    ventPath(vent('a', { duct: { kind: 'round', diameter: given(diameter) }, lining: sheet(wool, 0.05) }), air);
  const narrow = round(0.1);
  const within = round(0.2);
  expect(narrow.result.notes.join()).toContain('narrower than the table covers');
  expect(narrow.halfWidth[10]).toBeCloseTo(Math.hypot(4, 5), 9);
  expect(within.result.notes.join()).not.toContain('narrower');
});

it('ductPathLoss(vent) of a long run with many bends is held at 40 dB, and a note says so', () => {
  const { alongDuct, notes } = ductPathLoss(vent('a', { run: given(6), bends: given(4) }), air);
  expect(Math.max(...alongDuct)).toBe(40);
  expect(notes.join()).toContain('held at 40 dB');
  expect(ductPathLoss(vent('a', { run: given(0.3), bends: given(0) }), air).notes.join()).not.toContain('held at');
});

it('ventPath(vent) hands what lining, bends or a stated loss take off to the closed box', () => {
  const stated = vent('a', { insertionLoss: octaves([12, null, null, null, null, null, null]) });
  expect(ventPath(stated, air).attenuation?.[0]).toBe(12);
  expect(ventPath(vent('a', { lining: undefined, bends: given(0) }), air).attenuation).toEqual(Array(21).fill(0));
});
