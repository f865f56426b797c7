import { describe, expect, it } from 'vitest';
import { booth, given, quietFan, session, shell, vent } from '../fixtures/spec-builder.js';
import { resultOf } from './result-of.js';

describe('airResult(booth, session, site, volume, air, memo)', () => {
  it('rises in a straight line without a fan: 3.8 m3 and 20 L/h pass 1000 ppm from 600 in 4.6 min', () => {
    const air = resultOf(booth(), session(), 3.8);
    // 400e-6 x 3.8 m3 / 20e-3 m3/h
    expect(air?.fanOff.minutesTo['1000']).toBeCloseTo((400e-6 * 3.8 * 60) / 20e-3, 6);
    expect(air?.fanOff.endPpm).toBeCloseTo(600 + (1e6 * 20e-3 * 1.5) / 3.8, 6);
    expect(air?.fanOn).toBeNull();
    expect(air?.fanOff.steadyPpm).toBeNull();
  });

  it('settles at supply + G/Q with a fan', () => {
    const vents = [vent('intake', { fan: quietFan }), vent('exhaust')];
    const air = resultOf(booth(shell, { vents }), session(), 3.1);
    expect(air?.fanOn?.steadyPpm).toBeCloseTo(600 + 20 / 3600 / 10 / 1e-6, 6);
    expect(air?.fanOn?.minutesTo['2500']).toBeNull();
  });

  it('gives the speed in every duct: 10 L/s in 125 mm are 0.81 m/s', () => {
    const vents = [vent('intake', { fan: quietFan }), vent('exhaust')];
    const speeds = resultOf(booth(shell, { vents }), session(), 3.1)?.ductSpeeds;
    expect(speeds?.map((entry) => entry.vent)).toEqual(['intake', 'exhaust']);
    expect(speeds?.[1]?.mPerS).toBeCloseTo(0.815, 3);
  });

  it('takes the weakest of fans that stand one behind the other', () => {
    const strong = { ...quietFan, flow: given(0.02) };
    const vents = [vent('intake', { fan: quietFan }), vent('exhaust', { fan: strong })];
    const air = resultOf(booth(shell, { vents }), session(), 3.1);
    expect(air?.fanOn?.flowM3PerS).toBe(0.01);
    expect(air?.ductSpeeds.map(({ mPerS }) => mPerS)).toEqual([air?.ductSpeeds[0]?.mPerS, air?.ductSpeeds[0]?.mPerS]);
  });

  it('has no curve with the fan on and no speed where the air has no way out', () => {
    const air = resultOf(booth(shell, { vents: [vent('intake', { fan: quietFan })] }), session(), 3.1);
    expect(air?.fanOn).toBeNull();
    expect(air?.ductSpeeds).toEqual([]);
  });

  it('doubles the generation for two people and has no answer without a session', () => {
    expect(resultOf(booth(), session({ people: given(2) }), 3)?.generationM3PerS).toBeCloseTo(40e-3 / 3600, 12);
    expect(resultOf(booth(), undefined, 3)).toBeNull();
  });
});
