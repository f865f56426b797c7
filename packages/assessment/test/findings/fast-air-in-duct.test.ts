import { describe, expect, it } from 'vitest';
import { assess } from '../../src/index.js';
import { findingsById } from '../fixtures/assessed.js';
import {
  booth,
  given,
  place,
  quietFan,
  roomTone,
  session,
  shell,
  site,
  slab,
  spec,
  vent,
} from '../fixtures/spec-builder.js';

const id = 'fast-air-in-duct';
const round = (diameter: number) => ({ kind: 'round' as const, diameter: given(diameter) });

describe(id, () => {
  it('fires on 10 L/s through 75 mm, which is 2.26 m/s, and names the duct that helps', () => {
    const vents = [vent('intake', { fan: quietFan, duct: round(0.075) }), vent('exhaust')];
    const [finding] = findingsById(spec({ booths: [booth(shell, { vents })] }), id);
    expect(finding?.figures.speedMPerS).toBeCloseTo(2.26, 2);
    // 10 L/s at 1.27 m/s need 100 mm.
    expect(finding?.fix).toContain('round duct of 100 mm');
  });

  it('is silent just below the limit: 10 L/s through 92 mm are 1.50 m/s', () => {
    const vents = [vent('intake', { fan: quietFan, duct: round(0.092) }), vent('exhaust')];
    expect(findingsById(spec({ booths: [booth(shell, { vents })] }), id)).toEqual([]);
  });

  it('says what the hiss is predicted at: lost in the rest at 2.3 m/s, a warning at 20 m/s in an unrelated booth', () => {
    const slow = [vent('intake', { fan: quietFan, duct: round(0.075) }), vent('exhaust')];
    const [lost] = findingsById(spec({ booths: [booth(shell, { vents: slow })] }), id);
    expect(lost?.severity).toBe('information');
    expect(lost?.explanation).toContain('lost in the rest');
    const fast = [
      vent('in', { fan: { ...quietFan, flow: given(0.03) }, duct: round(0.15) }),
      vent('out', { duct: round(0.044) }),
    ];
    const heard = findingsById(spec({ booths: [{ ...booth(slab, { vents: fast }), name: 'cellar' }] }), id).find(
      ({ message }) => message.startsWith('out'),
    );
    expect(heard?.severity).toBe('warning');
    // 10 + 10 lg 0.00152 + 30 lg(0.6 x 19.7^2 x 0.5) = 44 dB where it peaks, and a bare box of less than 1 m2 lifts it.
    expect(heard?.figures.hissDbA).toBeGreaterThan(35);
    expect(heard?.figures.hissDbA).toBeLessThan(65);
  });

  it('comes first where it misses the room tone, with what the wider opening brings', () => {
    const grille = { range: place(), size: { width: given(0.1), height: given(0.1) }, free: given(0.3) };
    const vents = [vent('in', { fan: { ...quietFan, flow: given(0.03) }, grille }), vent('out')];
    const found = assess(
      spec({ site: site(), booths: [booth(shell, { vents })], requirements: [roomTone(35, 'A')] }),
    ).findings;
    expect(found[0]?.id).toBe(id);
    expect(found[0]?.message).toContain('at the grille');
    const { requirementBefore, requirementAfter } = found[0]!.figures;
    expect(requirementAfter).toBeLessThan((requirementBefore as number) - 5);
  });

  it('is silent while the session keeps the fan off, in all or in its takes', () => {
    const vents = [vent('intake', { fan: quietFan, duct: round(0.05) }), vent('exhaust')];
    const off = (changes: Parameters<typeof session>[0]) =>
      findingsById(spec({ booths: [booth(shell, { vents })], session: session(changes) }), id);
    expect(off({ fanSpeed: given('off' as const) })).toEqual([]);
    expect(off({ cycle: { take: given(600), rest: given(300), fan: given('off' as const) } })).toEqual([]);
    expect(off({ cycle: { take: given(600), rest: given(300), fan: given('on' as const) } })).toHaveLength(1);
  });

  it('is silent without a fan', () => {
    const vents = [vent('intake', { duct: round(0.05) })];
    expect(findingsById(spec({ booths: [booth(shell, { vents })] }), id)).toEqual([]);
  });

  it('fires on the narrow one of two ducts in an unrelated booth', () => {
    const vents = [
      vent('in', { fan: { ...quietFan, flow: given(0.02) }, duct: round(0.15) }),
      vent('out', { duct: round(0.1) }),
    ];
    const found = findingsById(spec({ booths: [{ ...booth(slab, { vents }), name: 'cellar' }] }), id);
    expect(found.map((finding) => finding.message.split(':')[0])).toEqual(['out']);
  });
});
