import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { airProperties } from '../../src/air/air-properties.js';
import { commonLossCoefficients } from '../../src/ventilation/common-loss-coefficients.js';
import { ductFrictionPressure } from '../../src/ventilation/duct-friction-pressure.js';
import { fanOperatingPoint } from '../../src/ventilation/fan-operating-point.js';
import { fanPressure } from '../../src/ventilation/fan-pressure.js';
import { fansInParallel } from '../../src/ventilation/fans-in-parallel.js';
import { fansInSeries } from '../../src/ventilation/fans-in-series.js';
import { type PathElement, pathPressure } from '../../src/ventilation/path-pressure.js';
import { suddenExpansionCoefficient } from '../../src/ventilation/sudden-expansion-coefficient.js';

const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
const step = fc.double({ min: 0.001, max: 0.05, noNaN: true });
const drop = fc.double({ min: 0.5, max: 30, noNaN: true });
/** Falling curves from no flow down to no pressure. */
const fan = fc.array(fc.tuple(step, drop), { minLength: 1, maxLength: 5 }).map((steps) => {
  let pressure = steps.reduce((sum, [, down]) => sum + down, 0);
  let flow = 0;
  const points = [{ flow, pressure }];
  for (const [more, down] of steps) {
    flow += more;
    pressure = Math.max(0, pressure - down);
    points.push({ flow, pressure });
  }
  points[points.length - 1] = { flow, pressure: 0 };
  return points;
});
const weak = [
  { flow: 0, pressure: 40 },
  { flow: 0.03, pressure: 0 },
];
const strong = [
  { flow: 0, pressure: 60 },
  { flow: 0.02, pressure: 40 },
  { flow: 0.04, pressure: 0 },
];

describe('fansInSeries', () => {
  test('pressures add at every flow that both have', () => {
    fc.assert(
      fc.property(fan, fan, fc.double({ min: 0, max: 1, noNaN: true }), (one, other, part) => {
        const both = fansInSeries([one, other]);
        const flow = part * both[both.length - 1]!.flow;
        const sum = fanPressure(one, flow) + fanPressure(other, flow);
        expect(fanPressure(both, flow)).toBeCloseTo(sum, 9);
      }),
    );
  });
  test('one fan is itself; names what cannot be', () => {
    expect(fansInSeries([strong])).toEqual(strong);
    expect(() => fansInSeries([])).toThrow('number of fans is 0');
    expect(() => fansInSeries([weak, weak.slice(1)])).toThrow('number of points of the fan curve is 1');
    const apart = weak.map(({ flow, pressure }) => ({ flow: flow + 1, pressure }));
    expect(() => fansInSeries([weak, apart])).toThrow('largest airflow in common is 0.03');
  });
});

describe('fansInParallel', () => {
  test('n alike have n times the flow at every pressure', () => {
    fc.assert(
      fc.property(fan, fc.integer({ min: 1, max: 4 }), (one, count) => {
        fansInParallel(Array.from({ length: count }, () => one)).forEach(({ flow, pressure }, index) => {
          expect(flow).toBeCloseTo(count * one[index]!.flow, 12);
          expect(pressure).toBe(one[index]!.pressure);
        });
      }),
    );
  });
  test('two that differ stop at the pressure of the weaker one', () => {
    const both = fansInParallel([weak, strong]);
    expect(both[0]).toEqual({ flow: 0.02, pressure: 40 });
    expect(both[both.length - 1]!.flow).toBeCloseTo(0.07, 12);
  });
  test('names what cannot be', () => {
    const flat = [
      { flow: 0, pressure: 10 },
      { flow: 0.1, pressure: 10 },
    ];
    expect(() => fansInParallel([flat])).toThrow('pressure of point 2 of the fan curve is 10');
    expect(() => fansInParallel([])).toThrow('number of fans is 0');
    const high = weak.map(({ flow, pressure }) => ({ flow, pressure: pressure + 100 }));
    expect(() => fansInParallel([weak, high])).toThrow('largest pressure in common is 40');
  });
});

describe('pathPressure', () => {
  const area = 0.00785;
  const duct = { kind: 'duct', area, perimeter: 0.314, length: 2, roughness: 1.5e-4 } as const;
  const outlet = { kind: 'fitting', area, coefficient: commonLossCoefficients.outlet } as const;
  const grille = { kind: 'device', pressure: 5, flow: 0.02, exponent: 2 } as const;
  const flow = fc.double({ min: 0, max: 0.1, noNaN: true });
  test('is the sum of its elements in any order, and zero without flow', () => {
    const speed = 0.02 / area;
    const byHand = ductFrictionPressure(duct, 0.02, air) + (air.density * speed ** 2) / 2 + 5;
    expect(pathPressure([duct, outlet, grille], 0.02, air)).toBeCloseTo(byHand, 9);
    expect(pathPressure([grille, duct, outlet], 0.02, air)).toBeCloseTo(byHand, 9);
    expect(pathPressure([grille, duct, outlet], 0, air)).toBe(0);
  });
  test('never falls with flow, and fittings and devices go with its square', () => {
    fc.assert(
      fc.property(flow, (each) => {
        expect(pathPressure([duct, outlet], 1.1 * each, air)).toBeGreaterThanOrEqual(
          pathPressure([duct, outlet], each, air),
        );
        const once = pathPressure([outlet, grille], each, air);
        expect(pathPressure([outlet, grille], 2 * each, air)).toBeCloseTo(4 * once, 6);
      }),
    );
  });
  test('is the system curve of a fan', () => {
    const system = (each: number) => pathPressure([duct, outlet, grille], each, air);
    const point = fanOperatingPoint(strong, system);
    expect(system(point.flow)).toBeCloseTo(point.pressure, 6);
    const two = fanOperatingPoint(fansInSeries([strong, strong]), system);
    expect(two.flow).toBeGreaterThan(point.flow);
  });
  test('names what cannot be', () => {
    const at = (element: PathElement) => () => pathPressure([element], 0.02, air);
    expect(at({ ...outlet, area: 0 })).toThrow('area of the fitting is 0');
    expect(at({ ...grille, exponent: 3 })).toThrow('exponent of the device is 3');
    expect(at({ ...outlet, kind: 'hole' } as never)).toThrow('kind of the path element is "hole"');
    expect(() => pathPressure([outlet], -1, air)).toThrow('airflow is -1');
  });
});

describe('suddenExpansionCoefficient', () => {
  test('is 0 without a change, 1 into a room, and rises between', () => {
    expect(suddenExpansionCoefficient(1, 1)).toBe(0);
    expect(suddenExpansionCoefficient(1, 1e9)).toBeCloseTo(commonLossCoefficients.outlet, 6);
    expect(suddenExpansionCoefficient(1, 2)).toBe(0.25);
    expect(() => suddenExpansionCoefficient(2, 1)).toThrow('area of the wide duct is 1');
  });
});
