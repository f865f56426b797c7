import type { Material } from '@boothwright/language';
import { expect, it } from 'vitest';
import { pricePerArea } from '../../src/assembly/price.js';
import { airGap, given, gypsum, lumber, plywood, sheet, wool } from '../fixtures/spec-builder.js';

function priced(
  material: Material,
  amount: number,
  per: 'm2' | 'm' | 'm3' | 'kg' | 'sheet',
  currency = 'EUR',
): Material {
  return { ...material, price: given({ amount, currency, per }) };
}

it('pricePerArea(layers) adds prices per area, volume and mass', () => {
  const price = pricePerArea([
    sheet(priced(plywood, 13, 'm2'), 0.012),
    airGap(0.05),
    sheet(priced(wool, 100, 'm3'), 0.05),
    sheet(priced(gypsum, 1, 'kg'), 0.01),
  ]);
  expect(price?.currency).toBe('EUR');
  expect(price?.amount).toBeCloseTo(13 + 5 + 7, 9);
});

it('pricePerArea(layers) has no answer when a layer has no price, or one per sheet, or another currency', () => {
  expect(pricePerArea([sheet(priced(plywood, 13, 'm2'), 0.012), sheet(gypsum, 0.01)])).toBeNull();
  expect(pricePerArea([sheet(priced(plywood, 13, 'sheet'), 0.012)])).toBeNull();
  expect(
    pricePerArea([sheet(priced(plywood, 13, 'm2'), 0.012), sheet(priced(gypsum, 13, 'm2', 'USD'), 0.012)]),
  ).toBeNull();
});

it('pricePerArea(layers) counts studs by their run per area', () => {
  const studs = {
    kind: 'frame' as const,
    width: given(0.045),
    depth: given(0.07),
    spacing: given(0.5),
    lumber: priced(lumber, 2, 'm'),
    fill: undefined,
    range: lumber.range,
  };
  expect(pricePerArea([studs])).toEqual({ amount: 4, currency: 'EUR' });
});
