import { expect, it } from 'vitest';
import { valuesOnGrid, valuesOnGridHeld } from '../../src/bands/quantity-table.js';
import { octaves } from '../fixtures/spec-builder.js';

it('valuesOnGrid(table) holds an octave value in each of its thirds', () => {
  const values = valuesOnGrid(octaves([null, 0.3, null, null, null, null, null]).value);
  expect(values.slice(2, 7)).toEqual([null, 0.3, 0.3, 0.3, null]);
});

it('valuesOnGridHeld(table) takes the nearest stated band where none is stated', () => {
  const values = valuesOnGridHeld(octaves([null, 0.3, null, 0.7, null, null, null]).value) as number[];
  expect(values[0]).toBe(0.3);
  expect(values.at(-1)).toBe(0.7);
  expect(values).toHaveLength(21);
});

it('valuesOnGridHeld(table) has no answer for a table without a band of the grid', () => {
  expect(valuesOnGridHeld(octaves([null, null, null, null, null, null, null]).value)).toBeUndefined();
});
