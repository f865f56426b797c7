import { expect, test } from 'vitest';
import { thirdOctaveBands } from '../../src/bands/bands.js';
import { frequencyWeighting } from '../../src/levels/frequency-weighting.js';
import { weightedTotal } from '../../src/levels/weighted-total.js';

const only = (index: number, level: number) => thirdOctaveBands.map((_, band) => (band === index ? level : null));

test('weightedTotal(levels, kind) of a single known band is its weighted level', () => {
  const at50 = thirdOctaveBands[0]!.exact;
  expect(weightedTotal(only(0, 60), 'A')).toBeCloseTo(60 + frequencyWeighting('A', at50), 12);
  expect(weightedTotal(only(0, 60), 'Z')).toBeCloseTo(60, 12);
});
test('weightedTotal(levels, kind) is null when every band is unknown', () => {
  expect(weightedTotal(Array(21).fill(null), 'A')).toBeNull();
});
test('weightedTotal(levels, kind) rejects a wrong number of bands', () => {
  expect(() => weightedTotal([60], 'A')).toThrow('number of bands of the third-octave band level is 1, expected 21');
});
