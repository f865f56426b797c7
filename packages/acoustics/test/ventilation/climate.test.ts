import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { airHeatCapacity } from '../../src/air/air-heat-capacity.js';
import { airProperties } from '../../src/air/air-properties.js';
import { vapourDensity } from '../../src/air/vapour-density.js';
import { co2Concentration } from '../../src/ventilation/co2-concentration.js';
import { co2TimeTo } from '../../src/ventilation/co2-time-to.js';
import { followSchedule } from '../../src/ventilation/follow-schedule.js';
import { occupantHeat } from '../../src/ventilation/occupant-heat.js';
import { steadyCo2 } from '../../src/ventilation/steady-co2.js';
import { steadyZoneConcentrations } from '../../src/ventilation/steady-zone-concentrations.js';
import { steadyZoneTemperatures } from '../../src/ventilation/steady-zone-temperatures.js';
import { steadyZoneVapour } from '../../src/ventilation/steady-zone-vapour.js';
import { timeToThreshold } from '../../src/ventilation/time-to-threshold.js';
import { vapourOfLatentHeat } from '../../src/ventilation/vapour-of-latent-heat.js';
import { zoneClimate } from '../../src/ventilation/zone-climate.js';
import { zoneConcentrations } from '../../src/ventilation/zone-concentrations.js';
import { zoneTemperatures } from '../../src/ventilation/zone-temperatures.js';
import { zoneVapour } from '../../src/ventilation/zone-vapour.js';

const air = airProperties({ temperature: 22, relativeHumidity: 0.5 });
const perFlow = airHeatCapacity(air);
const zones = {
  volumes: [40, 3.7],
  between: [
    [0, 0.01],
    [0.01, 0],
  ],
  fromOutside: [0.02, 0],
  heatCapacities: [2e5, 3e4],
  conductances: [
    [0, 12],
    [12, 0],
  ],
  toOutside: [30, 0],
};
const heat = { outside: 5, gains: [400, 130] };
const flow = fc.double({ min: 1e-4, max: 0.1, noNaN: true });
const conductance = fc.double({ min: 0.1, max: 100, noNaN: true });
const gain = fc.double({ min: -500, max: 500, noNaN: true });
const threeZones = fc.record({
  between: fc.array(fc.array(flow, { minLength: 3, maxLength: 3 }), { minLength: 3, maxLength: 3 }),
  fromOutside: fc.array(flow, { minLength: 3, maxLength: 3 }),
  walls: fc.array(conductance, { minLength: 3, maxLength: 3 }),
  toOutside: fc.array(conductance, { minLength: 3, maxLength: 3 }),
  gains: fc.array(gain, { minLength: 3, maxLength: 3 }),
});
const built = ({
  between,
  fromOutside,
  walls: [ab, ac, bc],
  toOutside,
}: typeof threeZones extends fc.Arbitrary<infer T> ? T : never) => ({
  volumes: [40, 3.7, 12],
  heatCapacities: [2e5, 3e4, 6e4],
  between,
  // No zone gives more air than it gets.
  fromOutside: fromOutside.map((drawn, zone) => {
    const others = [0, 1, 2].filter((other) => other !== zone);
    const short = others.reduce((sum, other) => sum + between[zone]![other]! - between[other]![zone]!, 0);
    return drawn + Math.max(0, short);
  }),
  conductances: [
    [0, ab!, ac!],
    [ab!, 0, bc!],
    [ac!, bc!, 0],
  ],
  toOutside,
});

describe('zoneTemperatures', () => {
  test('one zone is the exponential by hand', () => {
    fc.assert(
      fc.property(flow, conductance, gain, fc.double({ min: 0, max: 1e5, noNaN: true }), (q, ua, watts, seconds) => {
        const one = {
          volumes: [4],
          between: [[0]],
          fromOutside: [q],
          heatCapacities: [3e4],
          conductances: [[0]],
          toOutside: [ua],
        };
        const losing = perFlow * q + ua;
        const end = 5 + watts / losing;
        const expected = end + (20 - end) * Math.exp((-losing * seconds) / 3e4);
        const [computed] = zoneTemperatures(one, { outside: 5, gains: [watts] }, [20], seconds, air);
        expect(Math.abs(computed! - expected)).toBeLessThan(1e-8 * (1 + Math.abs(end)));
      }),
    );
  });
  test('ends at steadyZoneTemperatures, where all that is given off leaves to outside', () => {
    fc.assert(
      fc.property(threeZones, (drawn) => {
        const space = built(drawn);
        const load = { outside: 5, gains: drawn.gains };
        const steady = steadyZoneTemperatures(space, load, air)!;
        const late = zoneTemperatures(space, load, [20, 21, 22], 1e8, air);
        steady.forEach((value, zone) => {
          expect(Math.abs(late[zone]! - value)).toBeLessThan(1e-6 * (1 + Math.abs(value)));
        });
        // Each zone for itself: what comes in is what goes out.
        steady.forEach((value, zone) => {
          const fromZones = steady.reduce((sum, other, from) => {
            const carried =
              from === zone ? 0 : perFlow * space.between[from]![zone]! + space.conductances[from]![zone]!;
            return sum + carried * (other - value);
          }, 0);
          const fromOutside = (perFlow * space.fromOutside[zone]! + space.toOutside[zone]!) * (5 - value);
          expect(Math.abs(fromZones + fromOutside + drawn.gains[zone]!)).toBeLessThan(1e-6);
        });
      }),
      { numRuns: 40 },
    );
  });
  test('more heat is nowhere colder, and a shift of all temperatures shifts the result', () => {
    fc.assert(
      fc.property(threeZones, fc.double({ min: 0, max: 2e4, noNaN: true }), (drawn, seconds) => {
        const space = built(drawn);
        const load = { outside: 5, gains: drawn.gains };
        const base = zoneTemperatures(space, load, [20, 21, 22], seconds, air);
        const warmer = zoneTemperatures(
          space,
          { ...load, gains: drawn.gains.map((watts) => watts + 50) },
          [20, 21, 22],
          seconds,
          air,
        );
        const shifted = zoneTemperatures(space, { ...load, outside: 6 }, [21, 22, 23], seconds, air);
        base.forEach((value, zone) => {
          expect(warmer[zone]!).toBeGreaterThanOrEqual(value - 1e-9);
          expect(shifted[zone]! - value).toBeCloseTo(1, 8);
        });
      }),
      { numRuns: 40 },
    );
  });
  test('closed and insulated zones keep their heat, and end alike', () => {
    const closed = { ...zones, fromOutside: [0, 0], toOutside: [0, 0] };
    const load = { outside: 5, gains: [0, 0] };
    const late = zoneTemperatures(closed, load, [20, 30], 1e6, air);
    expect(late[0]).toBeCloseTo(late[1]!, 9);
    expect(2e5 * late[0]! + 3e4 * late[1]!).toBeCloseTo(2e5 * 20 + 3e4 * 30, 3);
    expect(steadyZoneTemperatures(closed, load, air)).toBeNull();
  });
  test('names what cannot be', () => {
    const at =
      (changed: object, load = heat) =>
      () =>
        zoneTemperatures({ ...zones, ...changed }, load, [20, 20], 60, air);
    expect(at({ heatCapacities: [2e5, 0] })).toThrow('heat capacity of zone 2 of 2 is 0');
    expect(at({ toOutside: [1] })).toThrow('number of zones in toOutside is 1');
    expect(
      at({
        conductances: [
          [0, 12],
          [11, 0],
        ],
      }),
    ).toThrow('heat conductance from zone 1 to zone 2 is 12');
    expect(at({}, { ...heat, outside: Number.NaN })).toThrow('temperature outside is NaN');
    expect(() => zoneTemperatures(zones, heat, [20, 20], -1, air)).toThrow('time is -1');
    expect(() => zoneTemperatures(zones, heat, [20], 1, air)).toThrow('number of zones in start is 1');
  });
});

describe('steadyZoneConcentrations', () => {
  test('one zone is steadyCo2', () => {
    fc.assert(
      fc.property(flow, (q) => {
        const one = { volumes: [4], between: [[0]], fromOutside: [q] };
        const [computed] = steadyZoneConcentrations(one, { outside: 420, generation: [5e-6] })!;
        expect(computed! / steadyCo2({ supply: 420, generation: 5e-6, flow: q })!).toBeCloseTo(1, 12);
      }),
    );
  });
  test('two zones by hand, and null when one is cut off', () => {
    const steady = steadyZoneConcentrations(zones, { outside: 420, generation: [0, 5e-6] })!;
    expect(steady[0]).toBeCloseTo(420 + 5 / 0.02, 9);
    expect(steady[1]).toBeCloseTo(steady[0]! + 5 / 0.01, 9);
    const cut = {
      ...zones,
      between: [
        [0, 0],
        [0, 0],
      ],
    };
    expect(steadyZoneConcentrations(cut, { outside: 420, generation: [0, 0] })).toBeNull();
  });
});

describe('zoneVapour', () => {
  test('is zoneConcentrations in other units, and ends at steadyZoneVapour', () => {
    const load = { outside: 0.006, generation: [0, 1.9e-5] };
    const ppm = { outside: 6000, generation: load.generation };
    const vapour = zoneVapour(zones, load, [0.008, 0.009], 900);
    const concentrations = zoneConcentrations(zones, ppm, [8000, 9000], 900);
    vapour.forEach((value, zone) => {
      expect((1e6 * value) / concentrations[zone]!).toBeCloseTo(1, 10);
    });
    const late = zoneVapour(zones, load, [0.008, 0.009], 1e7);
    steadyZoneVapour(zones, load)!.forEach((value, zone) => {
      expect(late[zone]! / value).toBeCloseTo(1, 9);
    });
    expect(() => zoneVapour(zones, { ...load, outside: -1 }, [0, 0], 1)).toThrow('water vapour outside is -1');
    expect(() => zoneVapour(zones, load, [0, -1], 1)).toThrow('water vapour at the start in zone 2 of 2 is -1');
  });
});

describe('zoneClimate', () => {
  test('starts at the humidity of the air it starts with; a person makes a closed booth warmer and moister', () => {
    const { sensible, latent } = occupantHeat['seated at light work'];
    const booth = {
      volumes: [3.7],
      between: [[0]],
      fromOutside: [0],
      heatCapacities: [3e4],
      conductances: [[0]],
      toOutside: [20],
    };
    const load = {
      heat: { outside: 22, gains: [sensible] },
      vapour: { outside: vapourDensity(air), generation: [vapourOfLatentHeat(latent, 34)] },
    };
    const start = { temperatures: [22], vapour: [vapourDensity(air)] };
    expect(zoneClimate(booth, load, start, 0, air).relativeHumidities[0]).toBeCloseTo(0.5, 12);
    const later = zoneClimate(booth, load, start, 1800, air);
    expect(later.temperatures[0]).toBeGreaterThan(22);
    // 45 W evaporate 18.6 mg/s; half an hour of it in 3.7 m3 by hand.
    expect(later.vapour[0]! - start.vapour[0]!).toBeCloseTo((45 / (2.501e6 - 2361 * 34)) * (1800 / 3.7), 9);
    expect(later.relativeHumidities[0]).toBeGreaterThan(0.5);
  });
});

test('vapourOfLatentHeat is proportional to the heat and names what cannot be', () => {
  expect(vapourOfLatentHeat(90, 34)).toBeCloseTo(2 * vapourOfLatentHeat(45, 34), 12);
  expect(() => vapourOfLatentHeat(-1, 34)).toThrow('latent heat is -1');
  expect(() => vapourOfLatentHeat(45, 80)).toThrow('temperature of the water is 80');
});

describe('followSchedule', () => {
  const space = { start: 0, supply: 420, flow: 0.005, volume: 4 };
  const advance = (state: number, people: number, seconds: number) =>
    co2Concentration({ ...space, start: state, generation: people * 5e-6, seconds });
  test('a schedule of one setting, cut anywhere, is one span', () => {
    const span = fc.double({ min: 1, max: 5000, noNaN: true });
    fc.assert(
      fc.property(
        fc.array(span, { minLength: 1, maxLength: 6 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (lengths, part) => {
          const time = part * lengths.reduce((sum, each) => sum + each, 0);
          const spans = lengths.map((seconds) => ({ seconds, setting: 1 }));
          const [computed] = followSchedule(420, spans, advance, [time]);
          expect(computed! / advance(420, 1, time)).toBeCloseTo(1, 9);
        },
      ),
    );
  });
  test('a break in the booth lets the concentration fall', () => {
    const spans = [1, 0, 2].map((setting) => ({ seconds: 900, setting }));
    const [start, before, after, end] = followSchedule(420, spans, advance, [0, 900, 1800, 2700]);
    expect(start).toBe(420);
    expect(after).toBeLessThan(before!);
    expect(end).toBeGreaterThan(before!);
  });
  test('names a span or a time that cannot be', () => {
    const spans = [{ seconds: 60, setting: 1 }];
    expect(() => followSchedule(420, [{ seconds: 0, setting: 1 }], advance, [])).toThrow('length of span 1 of 1 is 0');
    expect(() => followSchedule(420, spans, advance, [61])).toThrow('time 1 of 1 is 61, expected at most 60');
  });
});

describe('timeToThreshold', () => {
  test('agrees with co2TimeTo', () => {
    const space = { start: 420, supply: 420, generation: 5e-6, flow: 0.005, volume: 4 };
    const valueAt = (seconds: number) => co2Concentration({ ...space, seconds });
    fc.assert(
      fc.property(fc.double({ min: 421, max: 1400, noNaN: true }), (threshold) => {
        const seconds = timeToThreshold(valueAt, threshold, { horizon: 20_000, resolution: 100 })!;
        expect(seconds).toBeCloseTo(co2TimeTo({ ...space, threshold })!, 5);
      }),
    );
    expect(timeToThreshold(valueAt, 1500, { horizon: 20_000, resolution: 100 })).toBeNull();
    expect(timeToThreshold(valueAt, 420, { horizon: 20_000, resolution: 100 })).toBe(0);
  });
  test('finds a fall as well, and the first of several passings', () => {
    expect(timeToThreshold((t) => 30 - t, 20, { horizon: 60, resolution: 7 })).toBeCloseTo(10, 9);
    expect(timeToThreshold((t) => Math.sin(t), 0.5, { horizon: 60, resolution: 0.1 })).toBeCloseTo(Math.PI / 6, 9);
  });
  test('names what cannot be', () => {
    expect(() => timeToThreshold(() => 1, 2, { horizon: 60, resolution: 0 })).toThrow('resolution is 0');
    expect(() => timeToThreshold(() => Number.NaN, 2, { horizon: 60, resolution: 1 })).toThrow(
      'value after 0 s is NaN',
    );
  });
});

test('an exchange of air too often to be counted is told, not waited for', () => {
  const one = { volumes: [1e-300], between: [[0]], fromOutside: [1e300] };
  expect(() => zoneConcentrations(one, { outside: 420, generation: [0] }, [420], 60)).toThrow(
    'times that the air is exchanged is Infinity',
  );
});

test('a zone that loses no heat warms in proportion to the time, and a closed one moistens likewise', () => {
  const sealed = {
    volumes: [4],
    between: [[0]],
    fromOutside: [0],
    heatCapacities: [60_000],
    conductances: [[0]],
    toOutside: [0],
  };
  const times = fc.double({ min: 0, max: 1e7, noNaN: true });
  fc.assert(
    fc.property(times, gain, (seconds, watts) => {
      const [warmed] = zoneTemperatures(sealed, { outside: 5, gains: [watts] }, [20], seconds, air);
      expect(warmed! - 20 - (watts * seconds) / 60_000).toBeCloseTo(0, 6);
      const [moistened] = zoneVapour(sealed, { outside: 0, generation: [2e-5] }, [0.01], seconds);
      expect(moistened! / (0.01 + (2e-5 * seconds) / 4)).toBeCloseTo(1, 12);
    }),
  );
});

test('temperature and moisture follow a schedule as they follow one span', () => {
  const load = (people: number) => ({
    heat: { outside: 5, gains: [0, 70 * people] },
    vapour: { outside: 0.006, generation: [0, 2e-5 * people] },
  });
  type Climate = { temperatures: readonly number[]; vapour: readonly number[] };
  const start: Climate = { temperatures: [20, 21], vapour: [0.008, 0.009] };
  const advance = (state: Climate, people: number, seconds: number): Climate =>
    zoneClimate(zones, load(people), state, seconds, air);
  const cut = [1, 1, 1].map((setting) => ({ seconds: 700, setting }));
  const [end] = followSchedule(start, cut, advance, [2100]);
  const whole = zoneClimate(zones, load(1), start, 2100, air);
  whole.temperatures.forEach((value, zone) => {
    expect(end!.temperatures[zone]).toBeCloseTo(value, 9);
    expect(end!.vapour[zone]! / whole.vapour[zone]!).toBeCloseTo(1, 10);
  });
});
