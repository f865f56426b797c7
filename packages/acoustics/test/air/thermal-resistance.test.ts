import { expect, test } from 'vitest';
import { airLayerResistance } from '../../src/air/air-layer-resistance.js';
import { boardConductivity } from '../../src/air/board-conductivity.js';
import { surfaceResistances } from '../../src/air/surface-resistances.js';

test('airLayerResistance(thickness, heatFlow) is linear between the rows and held beyond the last', () => {
  expect(airLayerResistance(0, 'across')).toBe(0);
  // Between 15 mm, 0.17, and 25 mm, 0.18.
  expect(airLayerResistance(0.02, 'across')).toBeCloseTo(0.175, 12);
  expect(airLayerResistance(1, 'down')).toBe(0.23);
  expect(airLayerResistance(0.0025, 'up')).toBeCloseTo(0.055, 12);
});

test('airLayerResistance(thickness, heatFlow) holds heat that goes down best', () => {
  for (const thickness of [0.015, 0.05, 0.2]) {
    expect(airLayerResistance(thickness, 'down')).toBeGreaterThan(airLayerResistance(thickness, 'up'));
  }
});

test('airLayerResistance(thickness, heatFlow) refuses what cannot be', () => {
  expect(() => airLayerResistance(-0.01, 'up')).toThrow('thickness of the air layer');
  expect(() => airLayerResistance(0.01, 'sideways' as 'up')).toThrow('way of the heat');
});

test('boardConductivity(density) rises with the density and is held at the ends', () => {
  expect(boardConductivity(600)).toBeCloseTo(0.15, 12);
  expect(boardConductivity(50)).toBe(0.09);
  expect(boardConductivity(8000)).toBe(1);
  expect(() => boardConductivity(0)).toThrow('density');
});

test('a single board of 12 mm between two rooms has a transmittance near 3 W/(m2 K)', () => {
  // 0.13 + 0.012/0.14 + 0.13 = 0.3457 m2 K/W for plywood of 550 kg/m3.
  const resistance = 2 * surfaceResistances.across + 0.012 / boardConductivity(550);
  expect(1 / resistance).toBeCloseTo(2.893, 3);
});
