import { expect, it } from 'vitest';
import { combinedHalfWidth } from '../../src/uncertainty/combined.js';
import { halfWidthAt, transmissionLossHalfWidth } from '../../src/uncertainty/model-uncertainty.js';
import { propagatedHalfWidth } from '../../src/uncertainty/propagated.js';

it('combinedHalfWidth(...) adds independent errors as squares', () => {
  expect(combinedHalfWidth(3, 4)).toBe(5);
  expect(combinedHalfWidth()).toBe(0);
});

it('propagatedHalfWidth(alternatives) is half of each difference, combined', () => {
  const alternatives = [
    { up: [13, 10], down: [7, 10] },
    { up: [14, 10], down: [6, 10] },
  ];
  expect(propagatedHalfWidth(alternatives, 2)).toEqual([5, 0]);
});

it('halfWidthAt(table, hz) holds up to and including the band that ends its zone', () => {
  const at = (hz: number) => halfWidthAt(transmissionLossHalfWidth['framed-leaves'], hz);
  expect(at(160)).toBe(at(50));
  expect(at(200)).toBe(at(1250));
  expect(at(1600)).toBe(at(5000));
  expect(at(200)).not.toBe(at(160));
});
