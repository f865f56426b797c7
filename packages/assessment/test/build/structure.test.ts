import { describe, expect, it } from 'vitest';
import { buildResult } from '../../src/build/build-result.js';
import { createMemo } from '../../src/memo/memo.js';
import { assembly, booth, byMass, given, place, session, site, vinyl } from '../fixtures/spec-builder.js';

const skin = assembly('skin', byMass(vinyl, 10));
const face = { assembly: skin, range: skin.range };
/** 1 m wide, 2 m deep, 2 m high, 10 kg/m2 everywhere and no thickness. */
const box = booth(skin, {
  inside: { width: given(1), depth: given(2), height: given(2) },
  faces: { front: face, back: face, left: face, right: face, roof: face, floor: face },
  doors: [],
  linings: [],
  contents: given(20),
});
const structure = (changes: Parameters<typeof site>[0] = {}, built = box) =>
  buildResult(built, site(changes), session(), undefined, createMemo()).structure;

describe('structureOf', () => {
  it('puts the roof half on either of the walls that it spans between', () => {
    const lines = new Map(structure().lineLoads.map((line) => [line.face, line]));
    // Front: 1 x 2 m2 at 10 kg/m2 on 1 m. Left: 2 x 2 m2 and half of the 20 kg of the roof, on 2 m.
    expect(lines.get('front')?.nPerM).toBeCloseTo(20 * 9.80665, 6);
    expect(lines.get('left')?.nPerM).toBeCloseTo(((40 + 10) * 9.80665) / 2, 6);
  });

  it('loses no mass between walls and deck', () => {
    const { lineLoads, deckMassKg } = structure();
    // 120 kg of walls, 20 roof, 20 floor, 80 of a person, 20 of contents.
    expect(lineLoads.reduce((sum, line) => sum + line.massKg, 0) + deckMassKg).toBeCloseTo(260, 9);
    expect(deckMassKg).toBeCloseTo(120, 9);
  });

  it('compares with often-quoted loads by their ratio and says that it is no check', () => {
    const { patchPa, beside, words } = structure();
    expect(patchPa).toBeCloseTo((260 * 9.80665) / 2, 6);
    expect(beside.find(({ pa }) => pa === 1440)?.ratio).toBeCloseTo(patchPa / 1440, 9);
    expect(words).toContain('not a check');
    expect(words).toContain('qualified person');
  });

  it('says which walls run along the joists, and whether a quarter turn would be gentler', () => {
    const along = structure({ joists: given<'width' | 'depth'>('depth') });
    expect(along.lineLoads.find((line) => line.face === 'left')?.joists).toBe('along');
    expect(along.joistWords).toContain('Turned by a quarter');
    const across = structure({ joists: given<'width' | 'depth'>('width') });
    expect(across.lineLoads.find((line) => line.face === 'left')?.joists).toBe('across');
    expect(across.joistWords).toContain('the gentler one');
  });

  it('says that the way of the joists is missing, but not on concrete', () => {
    expect(structure().joistWords).toContain('does not say which way the joists run');
    const floor = { kind: given<'timber' | 'concrete' | 'unknown'>('concrete'), limit: undefined };
    expect(structure({ floor }).joistWords).toBeNull();
  });

  it('shares the loaded booth among its mounts', () => {
    const mounts = { range: place(), count: given(8), stiffness: given(2e5) };
    expect(structure({}, { ...box, mounts }).perMountN).toBeCloseTo((260 * 9.80665) / 8, 6);
  });
});
