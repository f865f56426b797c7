import { describe, expect, it } from 'vitest';
import { findingsById } from '../fixtures/assessed.js';
import {
  airGap,
  assembly,
  byMass,
  frame,
  gypsum,
  noise,
  plywood,
  sheet,
  site,
  spec,
  vinyl,
  wool,
} from '../fixtures/spec-builder.js';

const id = 'cavity-resonance-in-band';
const alone = (...layers: Parameters<typeof assembly>[1][]) =>
  spec({ walls: [assembly('wall', ...layers)], booths: [], site: undefined, session: undefined });

describe(id, () => {
  it('fires on a thin gap that resonates in the voice, within 3 % of the formula', () => {
    const [finding] = findingsById(alone(byMass(vinyl, 4.9), airGap(0.006), byMass(vinyl, 3.04)), id);
    const expected = 60 * Math.sqrt((4.9 + 3.04) / (4.9 * 3.04 * 0.006));
    expect(Math.abs((finding?.figures.resonanceHz as number) / expected - 1)).toBeLessThan(0.03);
    expect(finding?.message).toContain('in the voice');
    expect(finding?.fix).toMatch(/A gap of \d+ mm filled with mineral fibre moves it to \d+ Hz/);
  });

  it('has a fix whose figures are computed: deeper is lower and better in the dip', () => {
    const [finding] = findingsById(alone(byMass(vinyl, 4.9), airGap(0.006), byMass(vinyl, 3.04)), id);
    const { resonanceHz, deeperGapResonanceHz, transmissionLossDb, deeperGapDb, withoutGapDb } = finding?.figures ?? {};
    expect(deeperGapResonanceHz).toBeLessThan(resonanceHz as number);
    expect(deeperGapDb).toBeGreaterThan(transmissionLossDb as number);
    expect(withoutGapDb).toBeGreaterThan(transmissionLossDb as number);
  });

  it('is silent for the same leaves in contact', () => {
    expect(findingsById(alone(byMass(vinyl, 4.9), airGap(0), byMass(vinyl, 3.04)), id)).toEqual([]);
  });

  it('is silent just below the voice when no source is there, and fires just above', () => {
    // Two leaves of 15 kg/m2: f0 = 60 sqrt(2 / (15 d)); 69.4 mm gives 83 Hz, 63 mm gives 87 Hz.
    expect(findingsById(alone(byMass(vinyl, 15), airGap(0.0694), byMass(vinyl, 15)), id)).toEqual([]);
    expect(findingsById(alone(byMass(vinyl, 15), airGap(0.063), byMass(vinyl, 15)), id)).toHaveLength(1);
  });

  it('fires below the voice where a source has its energy, and is silent where it has none', () => {
    const wall = assembly('wall', byMass(vinyl, 20), sheet(wool, 0.1), byMass(vinyl, 20));
    const at = (levels: readonly number[]) =>
      findingsById(spec({ walls: [wall], booths: [], site: site({ sources: [noise('tram', levels)] }) }), id);
    expect(at([60, 50, 40, 30, 20, 10, 0])[0]?.message).toContain('tram has its energy');
    expect(at([20, 30, 40, 50, 60, 60, 50])).toEqual([]);
  });

  it('fires in an unrelated framed wall of another booth', () => {
    const framed = assembly('party-wall', sheet(plywood, 0.018), frame(0.089, 0.089, 0.4064), sheet(gypsum, 0.0159));
    const [finding] = findingsById(spec({ walls: [framed], booths: [], site: site() }), id);
    expect(finding?.message).toContain('party-wall');
    expect(finding?.figures.resonanceHz).toBeGreaterThan(60);
  });

  it('leaves walls of three leaves to another finding', () => {
    const three = alone(byMass(vinyl, 5), airGap(0.02), byMass(vinyl, 5), airGap(0.02), byMass(vinyl, 5));
    expect(findingsById(three, id)).toEqual([]);
  });
});
