import { flowForCo2 } from '@boothwright/acoustics';
import { expect, it } from 'vitest';
import { fixedSupplyCourse } from '../../src/air/co2-course.js';
import { booth, given, quietFan, session, shell, vent } from '../fixtures/spec-builder.js';
import { resultOf } from './result-of.js';

// Figures that follow from the formula named with each. 20 L/h is the default of EN 16798-1 for an awake adult, read second-hand.

const breath = 20e-3 / 3600;
const renewed = (flow: number, changes: Parameters<typeof session>[0] = {}) =>
  resultOf(
    booth(shell, { vents: [vent('in', { fan: { ...quietFan, flow: given(flow) } }), vent('out')] }),
    session(changes),
    3.8,
  );

it('C(t) = C0 + G t/V: one person in 3.8 m3 brings about 90 ppm a minute', () => {
  const course = fixedSupplyCourse({ start: 600, supply: 600, generation: breath, flow: 0, volume: 3.8 });
  // 1e6 x 20e-3/60 / 3.8 = 87.7.
  expect(course.at(60) - course.at(0)).toBeCloseTo(87.72, 2);
  // 400/87.72 = 4.56 min; with the 90 ppm a minute of a rounded sum it is 4.4.
  expect((course.timeTo(1000) as number) / 60).toBeCloseTo(4.56, 2);
  expect(Math.abs((course.timeTo(1000) as number) / 60 - 4.4)).toBeLessThan(0.2);
});

it('Q = G/(C - C_s): 9.6 L/s a person hold 1000 ppm from 420', () => {
  expect((flowForCo2({ limit: 1000, supply: 420, generation: breath }) as number) * 1000).toBeCloseTo(9.58, 2);
  const held = renewed(breath / 580e-6, { supplyAir: given(420) });
  expect(held?.fanHigh?.steadyPpm).toBeCloseTo(1000, 3);
});

it('C = C_s + G/Q: 10 L/s from a bedroom at 800 ppm give 1360, 8 renewals an hour of 2.2 m3 1560 from 420', () => {
  expect(renewed(0.01, { supplyAir: given(800) })?.fanHigh?.steadyPpm).toBeCloseTo(1355.6, 1);
  const hourly = fixedSupplyCourse({
    start: 420,
    supply: 420,
    generation: breath,
    flow: (8 * 2.2) / 3600,
    volume: 2.2,
  });
  expect(hourly.steady).toBeCloseTo(1556.4, 1);
});

it('U = Q/S: 10 L/s in a round duct of 100 mm move at 1.27 m/s', () => {
  const duct = { kind: 'round' as const, diameter: given(0.1) };
  const air = resultOf(
    booth(shell, { vents: [vent('in', { fan: quietFan, duct }), vent('out', { duct })] }),
    session(),
    3.1,
  );
  expect(air?.ductSpeeds[0]?.mPerS).toBeCloseTo(1.273, 3);
});
