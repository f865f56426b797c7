import { expect, it } from 'vitest';
import { fixedSupplyCourse } from '../../src/air/co2-course.js';
import { co2Curve } from '../../src/air/co2-curve.js';

const balance = { start: 600, supply: 600, generation: 20e-3 / 3600, flow: 0, volume: 3 };
const curveOf = (changes: object, sessionMinutes: number) =>
  co2Curve(fixedSupplyCourse({ ...balance, ...changes }), { setting: 'off', flow: 0, sessionMinutes });

it('co2Curve(course, session) ends exactly at the end of the session', () => {
  const curve = curveOf({}, 90.5);
  expect(curve.minutes.at(-1)).toBe(90.5);
  expect(curve.ppm.at(-1)).toBe(curve.endPpm);
  expect(curve.minutes).toHaveLength(curve.ppm.length);
});

it('co2Curve(course, session) stays short for a long session', () => {
  expect(curveOf({}, 24 * 60).minutes.length).toBeLessThan(125);
});

it('co2Curve(course, session) says never for a level that takes longer than a day', () => {
  expect(curveOf({ generation: 1e-9 }, 60).minutesTo['5000']).toBeNull();
});

it('co2Curve(course, session) is there from the start where the supply air already is', () => {
  expect(curveOf({ start: 1200, supply: 1200 }, 60).minutesTo['1000']).toBe(0);
});

it('co2Curve(course, session) of a crowd in a closed box ends at air that is all CO2', () => {
  const curve = curveOf({ generation: 100 * balance.generation }, 24 * 60);
  expect(curve.endPpm).toBe(1e6);
  expect(Math.max(...curve.ppm)).toBe(1e6);
  expect(curve.ppm[1]).toBeLessThan(1e6);
});
