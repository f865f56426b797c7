import { describe, expect, it } from 'vitest';
import { findingsById } from '../fixtures/assessed.js';
import { booth, given, quietFan, shell, slab, spec, vent } from '../fixtures/spec-builder.js';

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
