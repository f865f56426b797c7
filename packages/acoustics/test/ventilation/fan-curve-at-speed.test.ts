import { expect, test } from 'vitest';
import { fanCurveAtSpeed } from '../../src/ventilation/fan-curve-at-speed.js';
import { fanOperatingPoint } from '../../src/ventilation/fan-operating-point.js';

const fan = [
  { flow: 0, pressure: 120 },
  { flow: 0.02, pressure: 80 },
  { flow: 0.04, pressure: 0 },
];

test('fanCurveAtSpeed(curve, ratio) shrinks flows with the speed and pressures with its square', () => {
  expect(fanCurveAtSpeed(fan, 0.5)).toEqual([
    { flow: 0, pressure: 30 },
    { flow: 0.01, pressure: 20 },
    { flow: 0.02, pressure: 0 },
  ]);
  expect(fanCurveAtSpeed(fan, 1)).toEqual(fan);
});

test('fanCurveAtSpeed(curve, ratio) moves the operating point on a square law in proportion', () => {
  const system = (flow: number) => 1e5 * flow ** 2;
  const full = fanOperatingPoint(fan, system);
  const slow = fanOperatingPoint(fanCurveAtSpeed(fan, 0.6), system);
  expect(slow.flow / full.flow).toBeCloseTo(0.6, 6);
  expect(slow.pressure / full.pressure).toBeCloseTo(0.36, 6);
});

test('fanCurveAtSpeed(curve, ratio) refuses a fan that stands still', () => {
  expect(() => fanCurveAtSpeed(fan, 0)).toThrow('speed ratio');
});
