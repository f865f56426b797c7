import { expect, it } from 'vitest';
import { co2Curve } from '../../src/air/co2-curve.js';

const balance = { start: 600, supply: 600, generation: 20e-3 / 3600, flow: 0, volume: 3 };

it('co2Curve(balance) ends exactly at the end of the session', () => {
  const curve = co2Curve(balance, 'off', 90.5);
  expect(curve.minutes.at(-1)).toBe(90.5);
  expect(curve.ppm.at(-1)).toBe(curve.endPpm);
  expect(curve.minutes).toHaveLength(curve.ppm.length);
});

it('co2Curve(balance) stays short for a long session', () => {
  expect(co2Curve(balance, 'off', 24 * 60).minutes.length).toBeLessThan(125);
});

it('co2Curve(balance) says never for a level that takes longer than a day', () => {
  expect(co2Curve({ ...balance, generation: 1e-9 }, 'off', 60).minutesTo['5000']).toBeNull();
});

it('co2Curve(balance) is there from the start where the supply air already is', () => {
  expect(co2Curve({ ...balance, start: 1200, supply: 1200 }, 'off', 60).minutesTo['1000']).toBe(0);
});

it('co2Curve(balance) of a crowd in a closed box ends at air that is all CO2', () => {
  const curve = co2Curve({ ...balance, generation: 100 * balance.generation }, 'off', 24 * 60);
  expect(curve.endPpm).toBe(1e6);
  expect(Math.max(...curve.ppm)).toBe(1e6);
  expect(curve.ppm[1]).toBeLessThan(1e6);
});
