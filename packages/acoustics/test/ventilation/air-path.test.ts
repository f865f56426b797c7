import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { airProperties } from '../../src/air/air-properties.js';
import { co2Concentration } from '../../src/ventilation/co2-concentration.js';
import { ductFrictionFactor } from '../../src/ventilation/duct-friction-factor.js';
import { ductFrictionPressure } from '../../src/ventilation/duct-friction-pressure.js';
import { fanOperatingPoint } from '../../src/ventilation/fan-operating-point.js';
import { fanPressure } from '../../src/ventilation/fan-pressure.js';
import { zoneConcentrations } from '../../src/ventilation/zone-concentrations.js';

describe('ductFrictionFactor', () => {
  test('solves Colebrook, is laminar below 2300 and joins without a step', () => {
    const factor = ductFrictionFactor(1e5, 0.001);
    expect(1 / Math.sqrt(factor)).toBeCloseTo(-2 * Math.log10(0.001 / 3.7 + 2.51 / (1e5 * Math.sqrt(factor))), 9);
    expect(ductFrictionFactor(1000, 0)).toBe(0.064);
    expect(ductFrictionFactor(2300.0001, 0)).toBeCloseTo(64 / 2300, 6);
    expect(() => ductFrictionFactor(0, 0)).toThrow('Reynolds number is 0');
  });
  test('the pressure lost is proportional to length and zero without flow', () => {
    const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
    const duct = { area: 0.0079, perimeter: 0.314, length: 2, roughness: 1e-4 };
    const once = ductFrictionPressure(duct, 0.02, air);
    expect(ductFrictionPressure({ ...duct, length: 4 }, 0.02, air)).toBeCloseTo(2 * once, 9);
    expect(ductFrictionPressure(duct, 0, air)).toBe(0);
  });
});

describe('fanOperatingPoint', () => {
  const curve = [
    { flow: 0, pressure: 60 },
    { flow: 0.02, pressure: 40 },
    { flow: 0.04, pressure: 0 },
  ];
  test('meets both curves', () => {
    const system = (flow: number) => 1e5 * flow ** 2;
    const point = fanOperatingPoint(curve, system);
    expect(point.pressure).toBeCloseTo(system(point.flow), 6);
    expect(point.pressure).toBeCloseTo(fanPressure(curve, point.flow), 9);
  });
  test('says so when the two never meet', () => {
    expect(() => fanOperatingPoint(curve, () => 100)).toThrow('system is never met by the fan');
  });
});

describe('zoneConcentrations', () => {
  test('one zone is co2Concentration', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 0.1, noNaN: true }),
        fc.double({ min: 0, max: 20_000, noNaN: true }),
        (flow, seconds) => {
          const zones = { volumes: [3.7], between: [[0]], fromOutside: [flow] };
          const [computed] = zoneConcentrations(zones, { outside: 420, generation: [5e-6] }, [600], seconds);
          const space = { start: 600, supply: 420, generation: 5e-6, flow, volume: 3.7, seconds };
          expect(computed! / co2Concentration(space)).toBeCloseTo(1, 9);
        },
      ),
    );
  });
  test('two zones end where the balance by hand has them', () => {
    // Outside air passes the room, then the booth, and comes back to the room.
    const zones = {
      volumes: [40, 3.7],
      between: [
        [0, 0.01],
        [0.01, 0],
      ],
      fromOutside: [0.02, 0],
    };
    const late = zoneConcentrations(zones, { outside: 420, generation: [0, 5e-6] }, [420, 420], 1e6);
    expect(late[0]).toBeCloseTo(420 + 5 / 0.02, 5);
    expect(late[1]).toBeCloseTo(late[0]! + 5 / 0.01, 5);
  });
  test('two spans are one, and closed zones keep their carbon dioxide', () => {
    const zones = {
      volumes: [40, 3.7],
      between: [
        [0, 0.01],
        [0.01, 0],
      ],
      fromOutside: [0, 0],
    };
    const load = { outside: 420, generation: [0, 0] };
    const half = zoneConcentrations(zones, load, [420, 5000], 300);
    const twice = zoneConcentrations(zones, load, half, 300);
    const whole = zoneConcentrations(zones, load, [420, 5000], 600);
    expect(twice[1]! / whole[1]!).toBeCloseTo(1, 10);
    expect(40 * whole[0]! + 3.7 * whole[1]!).toBeCloseTo(40 * 420 + 3.7 * 5000, 6);
  });
});
