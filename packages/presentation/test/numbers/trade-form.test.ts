import type { Sourced } from '@boothwright/language';
import { expect, test } from 'vitest';
import { tradeForm } from '../../src/numbers/trade-form.js';

const sourced = (value: number, tolerance?: number): Sourced<number> => ({
  value,
  origin: { kind: 'given' },
  range: { file: 'a.booth', from: 0, to: 1 },
  ...(tolerance === undefined ? {} : { tolerance }),
});

test('tradeForm(value, dimension) writes SI figures in the units of the trade', () => {
  expect(tradeForm(sourced(0.0125), 'length')).toBe('12.5 mm');
  expect(tradeForm(sourced(12000), 'resistivity')).toBe('12 kPa·s/m²');
  expect(tradeForm(sourced(2.1e9), 'modulus')).toBe('2.1 GPa');
  expect(tradeForm(sourced(0.3), 'ratio')).toBe('0.3');
  expect(tradeForm(sourced(0.01), 'flow')).toBe('10 L/s');
});

test('tradeForm(value, dimension) keeps a stated tolerance', () => {
  expect(tradeForm(sourced(4.9, 0.49), 'surface-mass')).toBe('4.9 kg/m² ± 0.49');
});
