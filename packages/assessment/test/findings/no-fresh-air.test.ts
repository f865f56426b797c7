import { describe, expect, it } from 'vitest';
import { findingsById } from '../fixtures/assessed.js';
import { booth, given, quietFan, session, shell, slab, spec, vent } from '../fixtures/spec-builder.js';

const id = 'no-fresh-air';

describe(id, () => {
  it('fires on a sealed booth with ppm at the end and minutes on the way', () => {
    const [finding] = findingsById(spec(), id);
    // 20 L/h into 3.105 m3 over 90 min from 600 ppm.
    expect(finding?.figures.endPpm).toBeCloseTo(600 + (1e6 * 20e-3 * 1.5) / 3.105, 3);
    expect(finding?.figures.minutesTo1000).toBeCloseTo((400e-6 * 3.105 * 60) / 20e-3, 6);
    expect(finding?.message).toContain('has no vent');
    // 20 L/h against 400 ppm of room: 13.9 L/s.
    expect(finding?.fix).toContain('13.9 L/s');
  });

  it('fires on vents without a fan, in an unrelated booth', () => {
    const other = { ...booth(slab, { vents: [vent('low'), vent('high')] }), name: 'cupboard' };
    const [finding] = findingsById(spec({ booths: [other] }), id);
    expect(finding?.message).toContain('cupboard has vents but no fan');
  });

  it('fires on a fan without a second opening, with the figure of the closed box', () => {
    const blown = booth(shell, { vents: [vent('intake', { fan: quietFan })] });
    const [finding] = findingsById(spec({ booths: [blown] }), id);
    expect(finding?.message).toContain('no second opening');
    expect(finding?.figures.endPpm).toBeCloseTo(600 + (1e6 * 20e-3 * 1.5) / 3.105, 3);
  });

  it('is silent with a fan, without people, and without a session', () => {
    const airy = booth(shell, { vents: [vent('intake', { fan: quietFan }), vent('exhaust')] });
    expect(findingsById(spec({ booths: [airy] }), id)).toEqual([]);
    expect(findingsById(spec({ session: session({ people: given(0) }) }), id)).toEqual([]);
    expect(findingsById(spec({ session: undefined }), id)).toEqual([]);
  });
});
