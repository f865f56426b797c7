import { describe, expect, it } from 'vitest';
import { panelsOf } from '../../src/build/panels.js';
import { sealingOf } from '../../src/build/sealing.js';
import { booth, given, place, shell, vent } from '../fixtures/spec-builder.js';

const panels = { range: place(), width: given(0.6), split: undefined, fastened: undefined, roof: undefined };

function seams(built: ReturnType<typeof booth>) {
  const { seams: list, totals, missing } = sealingOf(built, panelsOf(built));
  return { of: (place_: string) => list.find((seam) => seam.place === place_), totals, missing };
}

describe('sealingOf(booth, division)', () => {
  const cut = seams(booth(shell, { panels, vents: [vent('intake')] }));

  it('counts seams between panels by their height', () => {
    // Three panels in the back, 2 + 0.042 m high: two seams.
    expect(cut.of('between the panels of the back')?.metres).toBeCloseTo(2 * 2.042, 9);
    expect(cut.of('between the panels of the back')?.kind).toBe('compression gasket');
  });

  it('counts corners, roof and floor around the walls', () => {
    expect(cut.of('corners of the walls')?.metres).toBeCloseTo(4 * 2.042, 9);
    // Front and back 1.339 m, left and right between them 1.35 m.
    expect(cut.of('walls to roof')?.metres).toBeCloseTo(2 * 1.339 + 2 * 1.35, 9);
    expect(cut.of('walls to floor')?.metres).toBeCloseTo(2 * 1.339 + 2 * 1.35, 9);
  });

  it('counts a door by its sides and head, and its threshold apart', () => {
    expect(cut.of('door entry, sides and head')?.metres).toBeCloseTo(2 * 1.9 + 0.66, 9);
    expect(cut.of('door entry, threshold')).toMatchObject({ kind: 'threshold seal', metres: 0.66 });
    expect(cut.of('duct of intake through the left')?.metres).toBeCloseTo(Math.PI * 0.125, 9);
  });

  it('adds up by kind', () => {
    for (const { kind, metres } of cut.totals) expect(metres, kind).toBeGreaterThan(0);
    expect(cut.totals.find(({ kind }) => kind === 'threshold seal')?.metres).toBeCloseTo(0.66, 9);
  });

  it('counts a horizontal joint along the wall besides the upright ones', () => {
    const split = seams(booth(shell, { panels: { ...panels, split: given(1.2) }, doors: [] }));
    expect(split.of('between the panels of the back')?.metres).toBeCloseTo(2 * 2.042 + 1.339, 9);
  });

  it('says that seams between panels are missing when the faces are not cut', () => {
    const uncut = seams(booth());
    expect(uncut.of('between the panels of the back')).toBeUndefined();
    expect(uncut.missing.join(' ')).toContain('does not say how the faces are cut');
  });
});
