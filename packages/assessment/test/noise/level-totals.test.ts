import { expect, it } from 'vitest';
import { perBand } from '../../src/bands/grid.js';
import { levelTotals } from '../../src/noise/level-totals.js';

it('levelTotals(levels, halfWidth) moves every band together for the range', () => {
  const totals = levelTotals(
    perBand(() => 30),
    perBand(() => 4),
    'test',
  );
  const { value, low, high } = totals.dBZ as { value: number; low: number; high: number };
  expect(value).toBeCloseTo(30 + 10 * Math.log10(21), 9);
  expect(high - value).toBeCloseTo(4, 9);
  expect(value - low).toBeCloseTo(4, 9);
});

it('levelTotals(levels, halfWidth) has totals of what is known, and no noise criterion with an octave unknown', () => {
  const totals = levelTotals(
    perBand((band) => (band < 3 ? null : 30)),
    perBand(() => 4),
    'test',
  );
  expect(totals.dBA).not.toBeNull();
  expect(totals.dBA?.basis).toContain('100 Hz to 5 kHz');
  expect(totals.nc).toBeNull();
});

it('levelTotals(levels, halfWidth) has no total when nothing is known', () => {
  const totals = levelTotals(
    perBand(() => null),
    perBand(() => 4),
    'test',
  );
  expect(totals.dBA).toBeNull();
  expect(totals.dBZ).toBeNull();
});
