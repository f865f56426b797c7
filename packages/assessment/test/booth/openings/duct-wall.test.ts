import { airProperties } from '@boothwright/acoustics';
import { describe, expect, it } from 'vitest';
import { ductWallEntry, lossFromAlongTheRun } from '../../../src/booth/openings/duct-wall.js';
import { ventPath } from '../../../src/booth/openings/vent-path.js';
import { given, octaves, vent } from '../../fixtures/spec-builder.js';

const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
const centres = [1, 4, 7, 10, 13, 16, 19];
const flexible = given<'smooth' | 'flexible'>('flexible');
const losses = (changes: Parameters<typeof vent>[1]) => ventPath(vent('air', changes), air).result;

describe('ductWallEntry(vent)', () => {
  it('of a round steel duct is R_in + 3 - 10 lg(4 l/d), worked by hand', () => {
    // 125 mm and 1.2 m: 10 lg 38.4 = 15.8; 1 kHz: 44 - 4 + 20 lg(1000/1611) = 35.9; 4 kHz: 34 - 3 = 31.
    const found = ductWallEntry(vent('air'))?.loss as number[];
    expect(found[13]).toBeCloseTo(35.86 + 3 - 15.84, 1);
    expect(found[19]).toBeCloseTo(31 + 3 - 15.84, 1);
  });
  it('of a rectangular duct falls by 3 dB for twice the length, above its first mode', () => {
    const duct = { kind: 'rectangular', width: given(0.2), height: given(0.1) } as const;
    const [one, two] = [1, 2].map((run) => ductWallEntry(vent('air', { duct, run: given(run) }))?.loss[16] as number);
    expect((one as number) - (two as number)).toBeCloseTo(10 * Math.log10(2), 6);
  });
  it('of a lined hose is that of its open section at low frequency and does not depend on its length', () => {
    const at = (run: number) => ductWallEntry(vent('air', { wall: flexible, run: given(run) }))?.loss as number[];
    expect(at(1)[4]).toBeCloseTo(0, 9);
    // 4 kHz: R_out - 3 + 3 - 10 lg(4 l/d) = IL: 10.79 + 7.16 - (0.41419 + 0.2252) 4.92 = 14.8.
    expect(at(1)[19]).toBeCloseTo(14.8, 1);
    expect(at(3)).toEqual(at(1));
  });
  it('is unknown for a bare hose, a wide round duct and a path without a run', () => {
    expect(ductWallEntry(vent('air', { wall: flexible, lining: undefined }))).toBeUndefined();
    expect(ductWallEntry(vent('air', { duct: { kind: 'round', diameter: given(0.4) } }))).toBeUndefined();
    expect(ductWallEntry(vent('air', { run: given(0) }))).toBeUndefined();
  });
});

it('lossFromAlongTheRun(loss) is nothing for a bare duct and the mean over the length for a lined one', () => {
  expect(lossFromAlongTheRun(0)).toBe(0);
  const parts = Array.from({ length: 1000 }, (_, i) => 10 ** ((-20 * (i + 0.5)) / 1000 / 10));
  const mean = parts.reduce((sum, part) => sum + part, 0) / 1000;
  expect(lossFromAlongTheRun(20)).toBeCloseTo(-10 * Math.log10(mean), 3);
});

describe('ventPath(vent, air)', () => {
  it('takes both ways in together, so that a lined hose keeps out far less than its lining promises', () => {
    const hose = losses({ wall: flexible, run: given(3) });
    const steel = losses({ run: given(3) });
    expect(steel.transmissionLossDb[13]! - hose.transmissionLossDb[13]!).toBeGreaterThan(10);
    expect(hose.notes.join()).toContain('through the wall of the run');
  });
  it('keeps out less than the path would by its end alone', () => {
    // A run without lining takes nothing from what travels in it, so that the wall is all that it adds.
    const without = losses({ run: given(0), lining: undefined }).transmissionLossDb;
    const bare = losses({ lining: undefined }).transmissionLossDb;
    for (const band of centres) {
      expect(bare[band]!).toBeLessThan(without[band]!);
      expect(without[band]! - bare[band]!).toBeLessThan(1);
    }
  });
  it('says that a bare hose is not predicted', () => {
    expect(losses({ wall: flexible, lining: undefined }).notes.join()).toContain('not predicted');
  });
  it('leaves a stated insertion loss alone', () => {
    const found = losses({ wall: flexible, insertionLoss: octaves([20, 20, 20, 20, 20, 20, 20]) });
    for (const band of centres) expect(found.transmissionLossDb[band]).toBeCloseTo(20, 9);
    expect(found.notes.join()).not.toContain('wall of the run');
  });
});
