import { describe, expect, it } from 'vitest';
import { assess, findingsById } from '../fixtures/assessed.js';
import {
  airGap,
  assembly,
  booth,
  byMass,
  frame,
  gypsum,
  lining,
  plywood,
  sheet,
  shell,
  spec,
  vinyl,
  wool,
} from '../fixtures/spec-builder.js';

type Layer = Parameters<typeof assembly>[1];
const id = 'third-leaf';
const alone = (...layers: Parameters<typeof assembly>[1][]) =>
  spec({ walls: [assembly('wall', ...layers)], booths: [], site: undefined });

describe(id, () => {
  it('gives both resonances, and that of two leaves of the same mass and depth', () => {
    const [finding] = findingsById(
      alone(byMass(vinyl, 8.5), airGap(0.1), byMass(vinyl, 17), airGap(0.1), byMass(vinyl, 8.5)),
      id,
    );
    // 34 kg/m2 and 200 mm: 65 and 92 Hz for three leaves, 46 Hz for two.
    expect(finding?.figures.resonance1Hz).toBeCloseTo(65, 0);
    expect(Math.abs((finding?.figures.resonance2Hz as number) - 92)).toBeLessThan(1);
    expect(Math.abs((finding?.figures.twoLeavesHz as number) - 46)).toBeLessThan(0.5);
    expect(finding?.fix).toContain('middle leaf');
  });

  it('offers the move it computed, with its resonance and rating', () => {
    const three = [byMass(vinyl, 5), airGap(0.05), byMass(vinyl, 10), airGap(0.15), byMass(vinyl, 5)];
    const [finding] = findingsById(alone(...three), id);
    const [outer, first, middle, second, inner] = three as [Layer, Layer, Layer, Layer, Layer];
    const walls = [
      assembly('outer', outer, middle, first, second, inner),
      assembly('inner', outer, first, second, middle, inner),
    ];
    const both = Object.values(assess(spec({ walls, booths: [], site: undefined })).assemblies);
    const offered = both.find(({ ratings }) => ratings.stc === finding?.figures.movedStc);
    expect(offered?.resonancesHz[0]).toBe(finding?.figures.movedResonance1Hz);
    expect(finding?.fix).toContain(`STC ${offered?.ratings.stc} instead of ${finding?.figures.stc}`);
    expect(finding?.figures.movedRwPlusCtr50).toBe(
      Math.max(...both.map(({ ratings }) => ratings.rw + ratings.ctr50To5000)),
    );
  });

  it('is silent when neither move helps', () => {
    // A pane of 1 kg/m2 in the middle of a deep heavy wall: what it weighs is nothing beside the others.
    expect(
      findingsById(alone(byMass(vinyl, 25), airGap(0.15), byMass(vinyl, 0.2), airGap(0.15), byMass(vinyl, 25)), id),
    ).toEqual([]);
  });

  it('is silent for two leaves with a porous lining in front', () => {
    expect(findingsById(alone(byMass(vinyl, 8), airGap(0.1), byMass(vinyl, 8), sheet(wool, 0.1)), id)).toEqual([]);
  });

  it('is silent when the third sheet lies on the second', () => {
    expect(
      findingsById(alone(byMass(vinyl, 8), airGap(0.1), byMass(vinyl, 8), airGap(0), byMass(vinyl, 8)), id),
    ).toEqual([]);
  });

  it('fires in an unrelated framed wall with a board behind a second frame', () => {
    const wall = [sheet(plywood, 0.012), frame(0.07, 0.07), sheet(gypsum, 0.0125), frame(0.045), sheet(plywood, 0.009)];
    expect(findingsById(alone(...wall), id)[0]?.figures.leaves).toBe(3);
  });

  it('fires when a lining makes the third leaf, and names it once', () => {
    const boarded = booth(shell, {
      linings: [lining(['left', 'right', 'back'], 1, sheet(wool, 0.05), sheet(plywood, 0.006))],
    });
    const found = findingsById(spec({ booths: [boarded] }), id);
    expect(found).toHaveLength(1);
    expect(found[0]?.message).toContain('lining');
    expect(findingsById(spec(), id)).toEqual([]);
  });
});
