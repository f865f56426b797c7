import { airProperties, linedRectangularDuctLoss } from '@boothwright/acoustics';
import { describe, expect, it } from 'vitest';
import { chamberLoss } from '../../../src/booth/openings/chamber-loss.js';
import { ductPathLoss } from '../../../src/booth/openings/duct-loss.js';
import { mazeLoss } from '../../../src/booth/openings/maze-loss.js';
import { given, place, sheet, vent, wool } from '../../fixtures/spec-builder.js';

const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
const box = (lining?: number) => ({
  range: place(),
  size: { width: given(0.4), depth: given(0.3), height: given(0.3) },
  lining: lining === undefined ? undefined : sheet(wool, lining),
});
const maze = (changes = {}) => ({
  range: place(),
  turns: given(6),
  leg: given(0.25),
  angle: given(90),
  channel: { width: given(0.08), height: given(0.3) },
  lining: sheet(wool, 0.025),
  ...changes,
});

describe('chamberLoss(chamber, outletArea, air)', () => {
  it('is the plenum formula by hand for bare walls', () => {
    // 0.4 x 0.3 x 0.3 m, walls 0.66 m2 at 5 %, outlet 100 cm2: 0.01 (1/(pi 0.16) + 0.95/(0.66 0.05)) = 0.3078.
    const { loss } = chamberLoss(box(), 0.01, air);
    expect(loss[13]).toBeCloseTo(-10 * Math.log10(0.01 * (1 / (Math.PI * 0.16) + 0.95 / 0.033)), 9);
    expect(loss[13]).toBeCloseTo(5.1, 1);
  });

  it('gains from a lining most where the lining absorbs', () => {
    const [bare, lined] = [chamberLoss(box(), 0.01, air).loss, chamberLoss(box(0.025), 0.01, air).loss];
    expect((lined[16] as number) - (bare[16] as number)).toBeGreaterThan(5);
  });

  it('is never a gain, however small the box, and says below which frequency it is beyond its source', () => {
    const small = { ...box(), size: { width: given(0.1), depth: given(0.1), height: given(0.1) } };
    expect(Math.min(...chamberLoss(small, 0.05, air).loss)).toBeGreaterThanOrEqual(0);
    expect(chamberLoss(box(0.025), 0.01, air).notes.join()).toContain('wavelength');
  });
});

describe('mazeLoss(maze, air)', () => {
  it('is the sum of its lined legs and of its turns', () => {
    const legs = linedRectangularDuctLoss({ width: 0.08, height: 0.3, length: 7 * 0.25, lining: 0.025 }).loss;
    // A channel of 80 mm is 0.23 wavelengths wide at 1 kHz and 0.93 at 4 kHz: 1 dB and 8 or 11 dB a turn in the table.
    const { loss } = mazeLoss(maze(), air);
    expect((loss[13] as number) - (legs[13] as number)).toBeCloseTo(6 * 1, 9);
    expect((loss[19] as number) - (legs[19] as number)).toBeCloseTo(6 * 11, 9);
  });

  it('counts a flat turn in proportion and warns of turns close together', () => {
    const bare = { lining: undefined };
    expect(mazeLoss(maze({ ...bare, angle: given(45) }), air).loss[13]).toBeCloseTo(
      (mazeLoss(maze(bare), air).loss[13] as number) / 2,
      9,
    );
    const close = mazeLoss(maze({ leg: given(0.1) }), air);
    expect(close.extrapolated).toBe(true);
    expect(close.notes.join()).toContain('upper bound');
  });
});

describe('ductPathLoss(vent, air) of a path with boxes, maze and grille', () => {
  it('adds what they take to the plain path, and names every part', () => {
    const plain = ductPathLoss(vent('a', { run: given(0.3), bends: given(0) }), air);
    const built = vent('a', { run: given(0.3), bends: given(0), chambers: [box(0.025), box(0.025)], maze: maze() });
    const { parts, attenuation, alongDuct } = ductPathLoss(built, air);
    expect(parts.map(({ part }) => part)).toEqual(['duct', 'chambers', 'maze', 'end']);
    const chamber = parts.find(({ part }) => part === 'chambers');
    expect(chamber?.loss[10]).toBeCloseTo(
      2 * (chamberLoss(box(0.025), (Math.PI / 4) * 0.125 ** 2, air).loss[10] as number),
      9,
    );
    expect(attenuation[7]).toBeGreaterThan((plain.attenuation[7] as number) + 5);
    expect(Math.max(...alongDuct)).toBe(40);
  });

  it('reflects less at a wide grille than at the end of the duct', () => {
    const grille = { range: place(), size: { width: given(0.3), height: given(0.3) }, free: given(0.7) };
    const wide = ductPathLoss(vent('a', { grille }), air);
    const open = ductPathLoss(vent('a'), air);
    expect(wide.endReflection[0]).toBeLessThan((open.endReflection[0] as number) - 5);
    expect(wide.outerReflection).toEqual(open.endReflection);
  });

  it('takes the table of flexible ducts for a flexible one, whose thin wall lets the lows out', () => {
    const flexible = ductPathLoss(vent('a', { wall: given<'smooth' | 'flexible'>('flexible'), bends: given(0) }), air);
    const stiff = ductPathLoss(vent('a', { bends: given(0) }), air);
    expect(flexible.parts[0]?.loss[3]).not.toBeCloseTo(stiff.parts[0]?.loss[3] as number, 1);
  });
});
