import { airLayerResistance, boardConductivity, surfaceResistances } from '@boothwright/acoustics';
import { expect, test } from 'vitest';

test('ISO 6946:2007, Table 2 (as transcribed): closed layers of air, up, across and down', () => {
  const rows = [
    [0.005, 0.11, 0.11, 0.11],
    [0.01, 0.15, 0.15, 0.15],
    [0.025, 0.16, 0.18, 0.19],
    [0.05, 0.16, 0.18, 0.21],
    [0.1, 0.16, 0.18, 0.22],
    [0.3, 0.16, 0.18, 0.23],
  ] as const;
  for (const [thickness, ...printed] of rows) {
    expect((['up', 'across', 'down'] as const).map((way) => airLayerResistance(thickness, way))).toEqual(printed);
  }
});

test('ISO 6946:2007, Table 1 (as transcribed): surfaces inside', () => {
  expect(surfaceResistances).toEqual({ up: 0.1, across: 0.13, down: 0.17 });
});

test('EN 12524:2000, Table 1 (as transcribed): plywood in its rows, gypsum plasterboard of 900 kg/m3 within a fifth', () => {
  expect([300, 500, 700, 1000].map(boardConductivity)).toEqual([0.09, 0.13, 0.17, 0.24]);
  expect(Math.abs(boardConductivity(900) / 0.25 - 1)).toBeLessThan(0.2);
});
