import { co2Concentration, doorwayExchange } from '@boothwright/acoustics';
import { describe, expect, it } from 'vitest';
import { assumed, booth, given, quietFan, session, shell, site, vent } from '../fixtures/spec-builder.js';
import { resultOf } from './result-of.js';

const breath = 20e-3 / 3600;
const vents = [vent('in', { fan: quietFan }), vent('out')];
const cycle = (take: number, rest: number, fan: 'on' | 'off' = 'off') => ({
  cycle: { take: given(take * 60), rest: given(rest * 60), fan: given<'on' | 'off'>(fan) },
});
const takes = (changes: Parameters<typeof session>[0], boothChanges = {}, around?: ReturnType<typeof site>) =>
  resultOf(booth(shell, { vents, ...boothChanges }), session({ length: given(3600), ...changes }), 3.1, around)?.takes;

describe('takeCycle(...)', () => {
  it('is there only where the text says takes and rests', () => {
    expect(takes({})).toBeNull();
  });

  it('rises in a straight line in the first take without the fan, and falls through the open door in the rest', () => {
    const found = takes(cycle(12, 5));
    // 1e6 x 20e-3/60/3.1 = 107.5 ppm a minute.
    expect(found?.firstPeakPpm).toBeCloseTo(600 + 12 * 107.53, 0);
    const door = doorwayExchange({
      width: 0.66,
      height: 1.9,
      difference: 1,
      temperature: 20,
      // 0.40 + 0.0045 dT, ASHRAE Handbook, Fundamentals (1997), p. 25.13, as quoted on a public page.
      dischargeCoefficient: 0.4045,
    });
    const balance = { supply: 600, generation: breath, volume: 3.1 };
    // 60 min hold the takes that begin at 0, 17, 34 and 51 min.
    expect(found?.takes).toBe(4);
    const last = [1, 2, 3].reduce((peak) => {
      const rested = co2Concentration({ ...balance, start: peak, flow: door, seconds: 300 });
      return co2Concentration({ ...balance, start: rested, flow: 0, seconds: 720 });
    }, found?.firstPeakPpm as number);
    expect(found?.lastPeakPpm).toBeCloseTo(last, 0);
    expect(found?.doorExchangeM3PerS).toBeCloseTo(door, 9);
  });

  it('repeats a peak that a rest and a take lead back to', () => {
    const found = takes({ ...cycle(12, 1), length: given(10 * 3600) });
    expect(found?.lastPeakPpm).toBeCloseTo(found?.repeatingPeakPpm as number, 3);
    expect(found?.repeatingPeakPpm).toBeGreaterThan(found?.firstPeakPpm as number);
  });

  it('gives the longest take whose repeating peak keeps a level', () => {
    const found = takes(cycle(12, 5));
    const minutes = found?.longestTakeMinutes['1000'] as number;
    expect(takes(cycle(minutes, 5))?.repeatingPeakPpm).toBeLessThanOrEqual(1000);
    expect(takes(cycle(minutes + 1, 5))?.repeatingPeakPpm).toBeGreaterThan(1000);
    expect(found?.longestTakeMinutes['1500']).toBeGreaterThan(minutes);
  });

  it('never settles without a door and without a fan, and with the fan it does', () => {
    expect(takes(cycle(12, 5), { doors: [] })?.repeatingPeakPpm).toBeNull();
    expect(takes(cycle(12, 5), { doors: [] })?.note).toContain('Without a door');
    expect(takes(cycle(12, 5, 'on'))?.firstPeakPpm).toBeLessThan(takes(cycle(12, 5))?.firstPeakPpm as number);
  });

  it('fills the room with what the door lets out', () => {
    const around = site({ freshAir: given(0.003) });
    const open = takes({ ...cycle(12, 5), supplyAir: assumed(600, 'supply-air'), length: given(4 * 3600) }, {}, around);
    expect(open?.lastPeakPpm).toBeGreaterThan((open?.firstPeakPpm as number) + 100);
  });
});
