import { describe, expect, it } from 'vitest';
import { cautionsById } from '../fixtures/assessed.js';
import { booth, given, quietFan, session, shell, site, spec, vent } from '../fixtures/spec-builder.js';

// Air of 20 degC and 50 % has its dew point at 9.3 degC (psychrometric tables, common knowledge).
describe('moisture', () => {
  const of = (changes: Parameters<typeof site>[0]) => cautionsById(spec({ site: site(changes) }), 'moisture');

  it('says that water condenses on a surface below the dew point of the room, with both figures', () => {
    const found = of({ coldSurface: given(6) });
    expect(found).toHaveLength(1);
    expect(found[0]?.hazard).toContain('condenses');
    expect(found[0]?.number).toContain('dew point 9.3 degC');
    expect(found[0]?.number).toContain('surface 6.0 degC');
  });

  it('speaks of a surface just above the dew point, and not of a warm one', () => {
    const empty = (coldSurface: number) =>
      cautionsById(spec({ site: site({ coldSurface: given(coldSurface) }), session: undefined }), 'moisture');
    expect(empty(11)[0]?.hazard).toContain('near');
    expect(empty(16)).toEqual([]);
  });

  it('counts what people breathe out: a surface that the air of the room spares is wet from that of a closed booth', () => {
    const [found] = of({ coldSurface: given(16) });
    expect(found?.hazard).toContain('condenses');
    expect(found?.number).toContain('dew point 9.3 degC of the air of the room');
    // 50 W of moisture for an hour in some cubic metres without fresh air pass saturation.
    expect(found?.number).toMatch(/, [23]\d\.\d degC inside alcove at the end of the session with the fan off/);
  });

  it('looks at the fan as the session has it: 20 L/s leave the surface dry that no air leaves wet', () => {
    const aired = booth(shell, { vents: [vent('in', { fan: { ...quietFan, flow: given(0.02) } }), vent('out')] });
    const at = (fanSpeed: 'off' | 'high') =>
      cautionsById(
        spec({
          booths: [aired],
          site: site({ coldSurface: given(16) }),
          session: session({ fanSpeed: given(fanSpeed) }),
        }),
        'moisture',
      );
    // 50 W/2.42 MJ/kg = 20.7 mg/s in 20 L/s add 1.0 g/m3 to the 8.65 g/m3 of the room: dew point 11.0 degC.
    expect(at('high')).toEqual([]);
    expect(at('off')).toHaveLength(1);
  });

  it('asks for the surface of a cold room, and leaves a heated one alone', () => {
    expect(of({ temperature: given(9) })[0]?.number).toContain('cold-surface');
    expect(of({ temperature: given(20) })).toEqual([]);
  });
});
