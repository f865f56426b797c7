import { describe, expect, it } from 'vitest';
import { buildResult } from '../../src/build/build-result.js';
import { costOf } from '../../src/build/cost.js';
import { massByPart } from '../../src/build/mass.js';
import { panelsOf } from '../../src/build/panels.js';
import { createMemo } from '../../src/memo/memo.js';
import {
  assembly,
  booth,
  budget,
  byMass,
  given,
  lining,
  session,
  sheet,
  vinyl,
  wool,
} from '../fixtures/spec-builder.js';

/** Thin sheet of 10 kg/m2 on every face of a box of 1 x 1 x 2 m, so that inside, middle and outside agree. */
const skin = assembly('skin', byMass(vinyl, 10));
const face = { assembly: skin, range: skin.range };
const box = booth(skin, {
  inside: { width: given(1), depth: given(1), height: given(2) },
  faces: { front: face, back: face, left: face, right: face, roof: face, floor: face },
  doors: [],
  linings: [],
  contents: given(20),
});

describe('massByPart(booth)', () => {
  it('is area times mass per area of every face', () => {
    const parts = Object.fromEntries(massByPart(box, panelsOf(box)).map((part) => [part.part, part.kg]));
    expect(parts).toEqual({ front: 20, back: 20, left: 20, right: 20, roof: 10, floor: 10 });
  });

  it('counts linings on their covered share', () => {
    const lined = { ...box, linings: [lining(['left', 'right'], 0.5, sheet(wool, 0.05))] };
    expect(massByPart(lined, panelsOf(lined)).find((part) => part.part === 'linings')?.kg).toBeCloseTo(
      2 * 2 * 0.5 * 2,
      9,
    );
  });
});

describe('buildResult(booth, session, budget)', () => {
  it('presses with booth, people and contents on the outside footprint', () => {
    const build = buildResult(box, undefined, session(), undefined, createMemo());
    expect(build.massKg).toBeCloseTo(100, 9);
    expect(build.loadedMassKg).toBeCloseTo(200, 9);
    expect(build.floorLoadPa).toBeCloseTo(200 * 9.80665, 6);
  });

  it('presses without people when there is no session', () => {
    expect(buildResult(box, undefined, undefined, undefined, createMemo()).loadedMassKg).toBeCloseTo(120, 9);
  });
});

describe('costOf(budget)', () => {
  it('adds the list and its reserve', () => {
    const cost = costOf(budget([7, 38], [6, 11]));
    expect(cost?.amount).toBe(332);
    expect(cost?.withReserve).toBeCloseTo(365.2, 9);
    expect(cost?.currency).toBe('EUR');
  });

  it('has no answer for two currencies or an empty list', () => {
    expect(costOf(budget([1, 1, 'EUR'], [1, 1, 'USD']))).toBeNull();
    expect(costOf(budget())).toBeNull();
    expect(costOf(undefined)).toBeNull();
  });
});
