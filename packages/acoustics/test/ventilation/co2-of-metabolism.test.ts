import { expect, test } from 'vitest';
import { co2OfMetabolism } from '../../src/ventilation/co2-of-metabolism.js';

const man = { basalRate: 8.24, activity: 1, respiratoryQuotient: 0.85, temperature: 0, pressure: 101.325 };

test('co2OfMetabolism({ ... }) goes with the energy used', () => {
  // 0.85 x 8.24 x 273.15/101.325 x 0.000211 = 3.984e-3 L/s.
  expect(co2OfMetabolism(man)).toBeCloseTo(3.984e-6, 9);
  expect(co2OfMetabolism({ ...man, activity: 2 })).toBeCloseTo(2 * co2OfMetabolism(man), 15);
});

test('co2OfMetabolism({ ... }) counts more litres of warm and of thin air', () => {
  expect(co2OfMetabolism({ ...man, temperature: 20 }) / co2OfMetabolism(man)).toBeCloseTo(293.15 / 273.15, 12);
  expect(co2OfMetabolism({ ...man, pressure: 90 }) / co2OfMetabolism(man)).toBeCloseTo(101.325 / 90, 12);
  expect(() => co2OfMetabolism({ ...man, activity: 0 })).toThrow('activity');
});
