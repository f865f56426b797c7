import { describe, expect, it } from 'vitest';
import { findingsById } from '../fixtures/assessed.js';
import { booth, given, quietFan, requirement, session, shell, slab, spec, vent } from '../fixtures/spec-builder.js';

const id = 'more-air-needed';
const co2 = (ppm: number) => requirement({ kind: 'co2', text: `require co2 <= ${ppm} ppm`, limit: given(ppm) });
const aired = (flow: number, limit: number, changes = {}) =>
  spec({
    booths: [booth(shell, { vents: [vent('in', { fan: { ...quietFan, flow: given(flow) } }), vent('out')] })],
    requirements: [co2(limit)],
    ...changes,
  });

describe(id, () => {
  it('names the flow that holds the limit: 20 L/h over 400 ppm are 13.9 L/s', () => {
    const [finding] = findingsById(aired(0.005, 1000), id);
    expect(finding?.figures.neededFlowLPerS).toBeCloseTo(20 / 3600 / 400e-6, 9);
    expect(finding?.fix).toContain('13.9 L/s');
  });

  it('is silent with just that flow, and without a fan', () => {
    expect(findingsById(aired(0.0139, 1000), id)).toEqual([]);
    expect(findingsById(spec({ requirements: [co2(1000)] }), id)).toEqual([]);
  });

  it('tells when no flow can do it, because the supply air is at the limit', () => {
    const [finding] = findingsById(aired(0.05, 1000, { session: session({ supplyAir: given(1100) }) }), id);
    expect(finding?.fix).toContain('Air the room first');
  });

  it('looks at the setting that is judged: at low it says that high would do', () => {
    const low = session({ fanSpeed: given('low' as const) });
    const [finding] = findingsById(aired(0.0145, 1000, { session: low }), id);
    expect(finding?.figures.flowLPerS).toBeCloseTo(0.6 * 14.5, 9);
    expect(finding?.fix).toContain('Run the fan high');
    expect(findingsById(aired(0.0145, 1000), id)).toEqual([]);
  });

  it('with the fan off in the session says so, and what it would be with it', () => {
    const off = session({ fanSpeed: given('off' as const) });
    const [finding] = findingsById(aired(0.0145, 1000, { session: off }), id);
    expect(finding?.message).toContain('fan off, as the session says');
    expect(finding?.figures.flowLPerS).toBe(0);
    expect(finding?.figures.endPpm).toBeGreaterThan(3000);
    expect(finding?.fix).toContain('Run the fan high');
  });

  it('leaves takes with the fan off to another finding', () => {
    const cycle = { take: given(1800), rest: given(300), fan: given('off' as const) };
    const found = aired(0.0145, 1000, { session: session({ cycle }) });
    expect(findingsById(found, id)).toEqual([]);
    expect(findingsById(found, 'take-too-long')).toHaveLength(1);
  });

  it('fires in an unrelated booth for two people, and comes first', () => {
    const cellar = { ...booth(slab, { vents: [vent('a', { fan: quietFan }), vent('b')] }), name: 'cellar' };
    const found = findingsById(
      spec({ booths: [cellar], session: session({ people: given(2) }), requirements: [co2(900)] }),
      id,
    );
    expect(found[0]?.message).toContain('cellar');
    expect(found[0]?.figures.neededFlowLPerS).toBeCloseTo(40 / 3600 / 300e-6, 9);
  });
});
