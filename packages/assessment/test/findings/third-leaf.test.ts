import { describe, expect, it } from 'vitest';
import { findingsById } from '../fixtures/assessed.js';
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
