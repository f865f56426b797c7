import { describe, expect, it } from 'vitest';
import { findingsById, onlyBooth } from '../fixtures/assessed.js';
import { smallBooth } from '../fixtures/booth-text.js';
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

  it('says whether the ducts that are there are as wide as that air wants', () => {
    const fixOf = (limit: number, metres: number) => {
      const duct = { kind: 'round' as const, diameter: given(metres) };
      const vents = [vent('in', { duct, fan: { ...quietFan, flow: given(0.005) } }), vent('out', { duct })];
      return findingsById(aired(0.005, limit, { booths: [booth(shell, { vents })] }), id)[0]?.fix;
    };
    expect(fixOf(1000, 0.15)).toContain('the ducts of this booth can carry it so');
    expect(fixOf(1000, 0.08)).toContain('in and out are narrower');
  });

  it('is silent with just that flow, and without a fan', () => {
    expect(findingsById(aired(0.0139, 1000), id)).toEqual([]);
    expect(findingsById(spec({ requirements: [co2(1000)] }), id)).toEqual([]);
  });

  it('tells when no flow can do it, because the supply air is at the limit', () => {
    const [finding] = findingsById(aired(0.05, 1000, { session: session({ supplyAir: given(1100) }) }), id);
    expect(finding?.fix).toContain('Air the room first');
  });

  it('looks ahead in a room that fills up: the flow holds the limit however long the session', () => {
    const inRoom = (litres: number, length: string, limit = 1200) =>
      smallBooth({
        site: 'room 3.8 m x 3.2 m x 2.5 m; fresh-air 15 L/s',
        vents: `vent in on left { duct 250 mm; run 1 m; fan supply ${litres} L/s }; vent out on right { duct 250 mm; run 1 m }`,
        session: `length ${length}`,
        requirements: `require co2 <= ${limit} ppm`,
      });
    const [finding] = findingsById(inRoom(8, '60 min'), id);
    const needed = finding?.figures.neededFlowLPerS as number;
    // Steady: the room at outdoor air + G/fresh air, the booth above it by G/Q; 20 L/h, 420 ppm and 15 L/s.
    const generation = 20 / 3.6e6;
    const room = 420 + (1e6 * generation) / 0.015;
    expect(needed).toBeCloseTo((1e9 * generation) / (1200 - room), 1);
    expect(onlyBooth(inRoom(Math.ceil(needed), '24 h')).air?.fanOn?.endPpm).toBeLessThanOrEqual(1200);
    expect(findingsById(inRoom(Math.ceil(needed), '24 h'), id)).toEqual([]);
    // Below what the room itself comes to no flow of the booth can hold it for long.
    expect(findingsById(inRoom(8, '60 min', Math.floor(room) - 10), id)[0]?.fix).toContain('the room itself settles');
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
