import { describe, expect, it } from 'vitest';
import { assumed, booth, given, quietFan, session, shell, site, vent } from '../fixtures/spec-builder.js';
import { resultOf } from './result-of.js';

const open = { supplyAir: assumed(600, 'supply-air') };
const fresh = site({ freshAir: given(0.006), occupants: given(0) });
const vents = [vent('in', { fan: quietFan }), vent('out')];
const outdoors = { opensTo: given<'outdoors'>('outdoors') };

describe('the air that a booth gets', () => {
  it('stays as it is where the text states it, whatever the room gets', () => {
    const air = resultOf(booth(shell, { vents }), session({ supplyAir: given(800) }), 3.1, fresh);
    expect(air?.supply.model).toBe('fixed');
    expect(air?.fanHigh?.steadyPpm).toBeCloseTo(800 + 555.6, 1);
  });

  it('climbs with the room that it is drawn from: in the long run outdoors + G/Q_room + G/Q', () => {
    const air = resultOf(booth(shell, { vents }), session(open), 3.1, fresh);
    expect(air?.supply.model).toBe('two-zones');
    // 20 L/h over 6 L/s are 925.9 ppm in the room above 420, and over 10 L/s 555.6 ppm more in the booth.
    expect(air?.fanHigh?.steadyPpm).toBeCloseTo(420 + 925.9 + 555.6, 0);
    expect(air?.fanHigh?.endPpm).toBeLessThan(air?.fanHigh?.steadyPpm as number);
    expect(air?.supply.roomEndPpm).toBeGreaterThan(600);
    expect(air?.supplyPpm).toBe(air?.supply.roomEndPpm);
  });

  it('starts where the people in the room alone hold it', () => {
    // Two people: 40 L/h over 6 L/s are 1852 ppm above 420.
    const crowded = site({ freshAir: given(0.006), occupants: given(2) });
    expect(resultOf(booth(shell, { vents }), session(open), 3.1, crowded)?.startPpm).toBeCloseTo(420 + 1851.9, 0);
  });

  it('comes from outdoors where the vent that brings it opens there', () => {
    const supplied = [vent('in', { fan: quietFan, ...outdoors }), vent('out')];
    const air = resultOf(booth(shell, { vents: supplied }), session(), 3.1, site());
    expect(air?.fanHigh?.steadyPpm).toBeCloseTo(420 + 555.6, 1);
    // An exhaust outdoors changes nothing of what comes in.
    const drawn = [
      vent('out', { fan: { ...quietFan, direction: given<'supply' | 'exhaust'>('exhaust') }, ...outdoors }),
      vent('in'),
    ];
    expect(resultOf(booth(shell, { vents: drawn }), session(), 3.1, site())?.fanHigh?.steadyPpm).toBeCloseTo(1155.6, 1);
  });

  it('is renewed by an exhaust outdoors where that draws more through the room than it gets', () => {
    const drawn = [
      vent('out', { fan: { ...quietFan, direction: given<'supply' | 'exhaust'>('exhaust') }, ...outdoors }),
      vent('in'),
    ];
    const air = resultOf(booth(shell, { vents: drawn }), session(open), 3.1, fresh);
    // The breath leaves with the air: the room stays at 420 and the booth at 420 + 555.6.
    expect(air?.fanHigh?.steadyPpm).toBeCloseTo(975.6, 0);
  });

  it('stands still in a booth with its fan off, and is told so', () => {
    const air = resultOf(booth(shell, { vents }), session({ ...open, fanSpeed: given<'off'>('off') }), 3.1, fresh);
    expect(air?.judged).toBe('off');
    expect(air?.fanOff.endPpm).toBeGreaterThan(8000);
    expect(air?.fanOff.flowM3PerS).toBe(0);
  });

  it('finds the minute of a level as the curve passes it', () => {
    const air = resultOf(booth(shell, { vents }), session(open), 3.1, fresh);
    const at = air?.fanHigh?.minutesTo['1000'] as number;
    const { minutes, ppm } = air?.fanHigh ?? { minutes: [], ppm: [] };
    const after = minutes.findIndex((minute) => minute >= at);
    expect(ppm[after - 1]).toBeLessThan(1000);
    expect(ppm[after]).toBeGreaterThanOrEqual(1000);
  });
});
