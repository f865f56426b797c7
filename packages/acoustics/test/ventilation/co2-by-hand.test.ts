import { describe, expect, test } from 'vitest';
import { co2Concentration } from '../../src/ventilation/co2-concentration.js';
import { co2TimeTo } from '../../src/ventilation/co2-time-to.js';
import { flowForCo2 } from '../../src/ventilation/flow-for-co2.js';
import { steadyCo2 } from '../../src/ventilation/steady-co2.js';

// Figures by hand and from memory, so no published checks.

const litresPerHour = 1e-3 / 3600;
const litresPerSecond = 1e-3;
/** 20 L/h for an awake adult: default of EN 16798-1, read in a secondary page. */
const generation = 20 * litresPerHour;

describe('steady carbon dioxide', () => {
  // ASHRAE 62.1, informative appendix, from memory: quoted as "about 700 ppm"; the quotient is exact.
  test('0.31 L/min and 7.5 L/s per person: 689 ppm above the supply', () => {
    expect(Math.round(steadyCo2({ supply: 0, generation: 0.31e-3 / 60, flow: 7.5 * litresPerSecond })!)).toBe(689);
  });
  test.each([
    [420, 10, 976],
    [420, 12, 883],
    [800, 10, 1356],
  ])('derived by hand: supply %i ppm, %i L/s: %i ppm', (supply, flow, expected) => {
    expect(Math.round(steadyCo2({ supply, generation, flow: flow * litresPerSecond })!)).toBe(expected);
  });
  test('derived by hand: 8 renewals an hour hold 1560 ppm in 2.2 m3 and 1080 ppm in 3.8 m3, to the nearest 10', () => {
    const at = (volume: number) => steadyCo2({ supply: 420, generation, flow: (8 * volume) / 3600 })!;
    expect(Math.round(at(2.2) / 10)).toBe(156);
    expect(Math.round(at(3.8) / 10)).toBe(108);
  });
  test('derived by hand: 9.6 L/s hold 1000 ppm, 5.1 L/s hold 1500 ppm', () => {
    const flow = (limit: number) => flowForCo2({ limit, supply: 420, generation })! / litresPerSecond;
    expect(flow(1000)).toBeCloseTo(9.6, 1);
    expect(flow(1500)).toBeCloseTo(5.1, 1);
  });
});

describe('a closed booth without airflow', () => {
  // The hand figures (about 90 ppm a minute; 4.4, 21 and 49 min) hold for 3.7 m3 of air: a booth of 3.8 m3 less 0.1 m3 for
  // the performer, and likewise 2.1 for 2.2 m3. Taking the empty 3.8 m3 gives 88 ppm a minute and 4.6 min.
  const closed = (volume: number) => ({ start: 600, supply: 420, generation, flow: 0, volume });
  test('derived by hand: about 90 ppm a minute in 3.7 m3 of air', () => {
    expect(co2Concentration({ ...closed(3.7), seconds: 60 }) - 600).toBeCloseTo(90.1, 1);
    expect(co2Concentration({ ...closed(3.8), seconds: 60 }) - 600).toBeCloseTo(87.7, 1);
  });
  test.each([
    [3.7, 1000, 4.4],
    [3.7, 2500, 21],
    [3.7, 5000, 49],
    [2.1, 1000, 2.5],
    [2.1, 2500, 12],
    [2.1, 5000, 28],
  ])('derived by hand: %f m3 of air from 600 to %i ppm: %f min', (volume, threshold, minutes) => {
    const computed = co2TimeTo({ ...closed(volume), threshold })! / 60;
    expect(Math.abs(computed / minutes - 1)).toBeLessThan(0.015);
  });
  test('the empty 3.8 m3 take 4.56 min from 600 to 1000 ppm', () => {
    expect(co2TimeTo({ ...closed(3.8), threshold: 1000 })! / 60).toBeCloseTo(4.56, 2);
  });
});
