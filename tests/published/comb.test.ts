import { airProperties, combRipple } from '@boothwright/acoustics';
import { expect, test } from 'vitest';

const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });

// F. A. Everest, Master Handbook of Acoustics, ch. 10, pp. 201-202 (page images): the first null of a comb lies at
// 1 / (2 dt) and the nulls are 1 / dt apart. Worked by hand for a voice at 20 cm and a reflection that travels 55 cm:
// dt = 0.35 m / c, g = 20/55; with 80 % of its energy absorbed g = 20/55 sqrt(0.2).
test.each([
  [1, 2.7, -3.9],
  [0.2, 1.3, -1.5],
])('a comb of 20 cm against 55 cm with %f of the energy kept: null at 490 Hz, %f and %f dB', (kept, peak, dip) => {
  const level = 20 * Math.log10(20 / 55) + 10 * Math.log10(kept);
  const comb = combRipple(level, 0.35, air);
  expect(Math.abs(comb.firstDipHz - 490)).toBeLessThan(2);
  expect(comb.spacingHz / comb.firstDipHz).toBeCloseTo(2, 12);
  expect(Math.abs(comb.peak - peak)).toBeLessThan(0.05);
  expect(Math.abs(comb.dip - dip)).toBeLessThan(0.05);
});
