import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { co2Concentration } from '../../src/ventilation/co2-concentration.js';
import { co2TimeTo } from '../../src/ventilation/co2-time-to.js';
import { flowForCo2 } from '../../src/ventilation/flow-for-co2.js';
import { steadyCo2 } from '../../src/ventilation/steady-co2.js';

const balance = fc.record({
  start: fc.double({ min: 380, max: 3000, noNaN: true }),
  supply: fc.double({ min: 380, max: 1500, noNaN: true }),
  generation: fc.double({ min: 1e-6, max: 3e-5, noNaN: true }),
  flow: fc.double({ min: 1e-4, max: 0.1, noNaN: true }),
  volume: fc.double({ min: 0.5, max: 100, noNaN: true }),
});

describe('co2Concentration', () => {
  test('starts at the start and ends at the steady concentration', () => {
    fc.assert(
      fc.property(balance, (space) => {
        expect(co2Concentration({ ...space, seconds: 0 })).toBe(space.start);
        const late = co2Concentration({ ...space, seconds: (60 * space.volume) / space.flow });
        expect(late / steadyCo2(space)!).toBeCloseTo(1, 9);
      }),
    );
  });
  test('two spans of time one after the other are one span', () => {
    fc.assert(
      fc.property(balance, fc.double({ min: 0, max: 7200, noNaN: true }), (space, seconds) => {
        const half = co2Concentration({ ...space, seconds: seconds / 2 });
        const whole = co2Concentration({ ...space, start: half, seconds: seconds / 2 });
        expect(whole / co2Concentration({ ...space, seconds })).toBeCloseTo(1, 9);
      }),
    );
  });
  test('a vanishing airflow meets no airflow', () => {
    const closed = { start: 600, supply: 420, generation: 5e-6, volume: 3.7, seconds: 3600 };
    const none = co2Concentration({ ...closed, flow: 0 });
    expect(none).toBeCloseTo(600 + (1e6 * 5e-6 * 3600) / 3.7, 9);
    expect(co2Concentration({ ...closed, flow: 1e-15 })).toBeCloseTo(none, 6);
    expect(co2Concentration({ ...closed, flow: 1e-320 })).toBeCloseTo(none, 6);
  });
  test('names the input that cannot be', () => {
    const space = { start: 600, supply: 420, generation: 5e-6, flow: 0.01, volume: 3.7 };
    expect(() => co2Concentration({ ...space, seconds: -1 })).toThrow('time is -1');
    expect(() => co2Concentration({ ...space, volume: 0, seconds: 1 })).toThrow('air volume is 0');
    expect(() => co2Concentration({ ...space, flow: Number.NaN, seconds: 1 })).toThrow('airflow is NaN');
  });
});

describe('co2TimeTo', () => {
  test('the concentration at that time is the threshold', () => {
    fc.assert(
      fc.property(balance, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (space, part) => {
        const end = steadyCo2(space)!;
        fc.pre(end > space.start + 1);
        const threshold = space.start + part * (end - space.start);
        const seconds = co2TimeTo({ ...space, threshold })!;
        expect(co2Concentration({ ...space, seconds }) / threshold).toBeCloseTo(1, 9);
      }),
    );
  });
  test('is zero when the start is at the threshold, null when the threshold is never reached', () => {
    const space = { start: 420, supply: 420, generation: 5e-6, flow: 0.01, volume: 3.7 };
    expect(co2TimeTo({ ...space, threshold: 420 })).toBe(0);
    expect(co2TimeTo({ ...space, threshold: 920 })).toBeNull();
    expect(co2TimeTo({ ...space, threshold: 5000 })).toBeNull();
    expect(co2TimeTo({ ...space, flow: 0, generation: 0, threshold: 1000 })).toBeNull();
  });
});

describe('steadyCo2 and flowForCo2', () => {
  test('undo each other', () => {
    fc.assert(
      fc.property(balance, (space) => {
        const limit = steadyCo2(space)!;
        expect(flowForCo2({ ...space, limit })! / space.flow).toBeCloseTo(1, 6);
      }),
    );
  });
  test('without airflow there is no steady state; at the limit already no airflow helps', () => {
    expect(steadyCo2({ supply: 420, generation: 5e-6, flow: 0 })).toBeNull();
    expect(flowForCo2({ limit: 1000, supply: 1000, generation: 5e-6 })).toBeNull();
    expect(flowForCo2({ limit: 1000, supply: 420, generation: 0 })).toBe(0);
  });
});
