import { describe, expect, it } from 'vitest';
import { findingsById } from '../fixtures/assessed.js';
import { booth, given, lining, session, sheet, shell, slab, spec, wool } from '../fixtures/spec-builder.js';

const id = 'headroom-too-low';
const of = (stature: number, posture: 'stands' | 'sits' = 'stands') =>
  session({ stature: given(stature), posture: given<'stands' | 'sits'>(posture) });

describe(id, () => {
  // 2.00 m inside less 50 mm of lining at the roof leave 1.95 m; 1.90 m + 0.10 m = 2.00 m are needed.
  it('gives the missing millimetres for somebody who stands', () => {
    const [finding] = findingsById(spec({ session: of(1.9) }), id);
    expect(finding?.figures.missingM).toBeCloseTo(1.9 + 0.1 - 1.95, 9);
    expect(finding?.fix).toContain('50 mm');
  });

  it('is silent at just enough, for the same person seated, and without a stature', () => {
    expect(findingsById(spec({ session: of(1.85) }), id)).toEqual([]);
    expect(findingsById(spec({ session: of(1.9, 'sits') }), id)).toEqual([]);
    expect(findingsById(spec(), id)).toEqual([]);
  });

  it('fires in an unrelated low booth for somebody who sits', () => {
    const inside = { width: given(1.2), depth: given(1.4), height: given(1.5) };
    const low = { ...booth(slab, { inside, linings: [lining(['roof'], 1, sheet(wool, 0.1))] }), name: 'cupboard' };
    // 0.76 x 1.8 m + 0.1 m = 1.468 m of 1.400 m
    expect(findingsById(spec({ booths: [low], session: of(1.8, 'sits') }), id)[0]?.figures.missingM).toBeCloseTo(
      0.068,
      9,
    );
    expect(findingsById(spec({ booths: [booth(shell)], session: of(1.8, 'sits') }), id)).toEqual([]);
  });
});
