import { expect, test } from 'vitest';
import { airProperties } from '../../src/air/air-properties.js';
import { levelOutsideFacade } from '../../src/rooms/level-outside-facade.js';

const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });

test('levelOutsideFacade(...) spreads the power over a half sphere', () => {
  // 60 dB inside, R 30 dB, 2 m2: L_W = 60 - 30 - 6 + 3.01; at 5 m less 10 lg(2 pi 25) = 21.96.
  const reference = 10 * Math.log10(air.impedance / 400);
  expect(levelOutsideFacade(60, 30, 2, 5, air)).toBeCloseTo(27.01 - 21.96 + reference, 2);
  expect(levelOutsideFacade(60, 30, 2, 10, air)).toBeCloseTo(levelOutsideFacade(60, 30, 2, 5, air) - 6.02, 2);
});

test('levelOutsideFacade(...) never passes the level close to the element', () => {
  expect(levelOutsideFacade(60, 30, 10, 0.1, air)).toBeCloseTo(24 + 10 * Math.log10(air.impedance / 400), 9);
  expect(() => levelOutsideFacade(60, 30, 0, 1, air)).toThrow('area of the element is 0');
});
