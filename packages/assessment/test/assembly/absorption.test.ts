import { airProperties } from '@boothwright/acoustics';
import { expect, it } from 'vitest';
import { insideAbsorption } from '../../src/assembly/absorption.js';
import { createMemo } from '../../src/memo/memo.js';
import { byMass, carpet, gypsum, plywood, sheet, wool } from '../fixtures/spec-builder.js';

const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });

it('insideAbsorption(layers) of a covering is its own table, held at the ends', () => {
  const absorption = insideAbsorption([sheet(plywood, 0.018), byMass(carpet, 2)], air, createMemo());
  expect(absorption[13]).toBe(0.37);
  expect(absorption[0]).toBe(0.02);
});

it('insideAbsorption(layers) is open for a face without layers', () => {
  expect(insideAbsorption([], air, createMemo())).toEqual(Array(21).fill(1));
});

it('insideAbsorption(layers) of fibre before a board is high at 1 kHz and grows with its depth at 250 Hz', () => {
  const memo = createMemo();
  const thin = insideAbsorption([sheet(gypsum, 0.0125), sheet(wool, 0.05)], air, memo);
  const thick = insideAbsorption([sheet(gypsum, 0.0125), sheet(wool, 0.1)], air, memo);
  expect(thin[13]).toBeGreaterThan(0.8);
  expect((thick[7] as number) - (thin[7] as number)).toBeGreaterThan(0.1);
});

it('insideAbsorption(layers) stays between 0 and 1', () => {
  for (const value of insideAbsorption([sheet(plywood, 0.003), sheet(wool, 0.025)], air, createMemo())) {
    expect(value).toBeGreaterThanOrEqual(0);
    expect(value).toBeLessThanOrEqual(1);
  }
});
