import { describe, expect, test } from 'vitest';
import { ArgumentError } from '../../src/errors/argument-error.js';
import { co2Concentration } from '../../src/ventilation/co2-concentration.js';
import { steadyZoneConcentrations } from '../../src/ventilation/steady-zone-concentrations.js';
import { zoneConcentrations } from '../../src/ventilation/zone-concentrations.js';
import { zoneVapour } from '../../src/ventilation/zone-vapour.js';

const load = { outside: 420, generation: [0, 5e-6] };
const twoZones = (there: number, back: number, fresh: number) => ({
  volumes: [40, 4],
  between: [
    [0, there],
    [back, 0],
  ],
  fromOutside: [fresh, 0],
});

describe('a zone that gives more air than it gets', () => {
  test('is told with its flows', () => {
    const message =
      'airflow out of zone 2 of 2 into other zones is 0.03, expected at most the 0.01 m3/s that flow into it';
    const zones = twoZones(0.01, 0.03, 0.02);
    expect(() => zoneConcentrations(zones, load, [420, 420], 60)).toThrow(ArgumentError);
    expect(() => zoneConcentrations(zones, load, [420, 420], 60)).toThrow(message);
    expect(() => steadyZoneConcentrations(zones, load)).toThrow(message);
    expect(() => zoneVapour(zones, { outside: 0.006, generation: [0, 0] }, [0.006, 0.006], 60)).toThrow(message);
  });
  test('is not one whose exhaust makes up the difference, or whose flows are even', () => {
    expect(() => zoneConcentrations(twoZones(0.01, 0.004, 0.02), load, [420, 420], 60)).not.toThrow();
    expect(() => zoneConcentrations(twoZones(0.01, 0.01, 0), load, [420, 420], 60)).not.toThrow();
  });
});

describe('more carbon dioxide than air', () => {
  const closed = { start: 420, supply: 420, generation: 1e-3, flow: 0, volume: 4 };
  test('is told of one space', () => {
    expect(co2Concentration({ ...closed, seconds: 3000 })).toBeCloseTo(750_420, 6);
    expect(() => co2Concentration({ ...closed, seconds: 5000 })).toThrow(ArgumentError);
    expect(() => co2Concentration({ ...closed, seconds: 5000 })).toThrow(
      'CO2 after 5000 s is 1250420, expected a number of ppm of 0 or more and up to 1000000',
    );
    expect(() => co2Concentration({ ...closed, start: 2e6, seconds: 0 })).toThrow('CO2 at the start is 2000000');
  });
  test('is told of several zones', () => {
    const flood = { outside: 420, generation: [0, 1] };
    expect(() => zoneConcentrations(twoZones(0.01, 0.01, 0.02), flood, [420, 420], 600)).toThrow(
      'CO2 after 600 s in zone 1 of 2 is ',
    );
    expect(() => steadyZoneConcentrations(twoZones(0.01, 0.01, 0.02), flood)).toThrow(
      'CO2 in the long run in zone 1 of 2 is ',
    );
    expect(() => zoneConcentrations(twoZones(0.01, 0.01, 0.02), load, [420, 2e6], 1)).toThrow(
      'CO2 at the start in zone 2 of 2 is 2000000',
    );
  });
});
