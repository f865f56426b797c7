import { expect, test } from 'vitest';
import { bandName, formatFrequency } from '../../src/numbers/format-frequency.js';
import { formatFigures, formatNumber } from '../../src/numbers/format-number.js';
import { decimalsToTell, formatDifference, formatQuantity, formatRange } from '../../src/numbers/format-quantity.js';

test('formatNumber(value, decimals) rounds, never writes minus zero, never an exponent', () => {
  expect([
    formatNumber(12.5),
    formatNumber(-0.2),
    formatNumber(-57.4),
    formatNumber(1.25, 1),
    formatNumber(Number.NaN),
  ]).toEqual(['13', '0', '-57', '1.3', '–']);
});

test('formatFigures(value) keeps three figures and no idle zeros', () => {
  expect([0.125, 4.9, 24.34, 860, 12500, 0, 2, 0.02].map((value) => formatFigures(value))).toEqual([
    '0.125',
    '4.9',
    '24.3',
    '860',
    '12500',
    '0',
    '2',
    '0.02',
  ]);
});

test('formatQuantity(value, unit) writes each unit as the trade does', () => {
  expect(
    (
      [
        [19.4, 'NC'],
        [-57.2, 'dBFS'],
        [2554, 'Pa'],
        [0.284, 's'],
        [1154.6, 'ppm'],
        [2.1365, 'm'],
        [431.4, 'kg'],
        [1870, 'EUR'],
        [3.21, 'CHF'],
      ] as const
    ).map(([value, unit]) => formatQuantity(value, unit)),
  ).toEqual(['NC 19', '-57 dBFS', '2.6 kPa', '0.28 s', '1155 ppm', '2.136 m', '431 kg', '1870 EUR', '3.21 CHF']);
});

test('decimalsToTell(value, limit, unit) adds decimals only where rounding would hide a miss', () => {
  expect(decimalsToTell(35.4, 35, 'dBA')).toBe(1);
  expect(decimalsToTell(38, 35, 'dBA')).toBe(0);
  expect(decimalsToTell(35, 35, 'dBA')).toBe(0);
  expect(decimalsToTell(35.04, 35, 'dBA')).toBe(2);
  expect(decimalsToTell(36, 35, 'dBA')).toBe(0);
});

test('formatDifference(difference, unit) compares levels in dB, ratings in points, and never shows zero for a miss', () => {
  expect(formatDifference(-7.2, 'dBA')).toBe('7 dB');
  expect(formatDifference(-0.4, 'dBFS')).toBe('0.4 dB');
  expect(formatDifference(-6, 'NC')).toBe('6 points');
  expect(formatDifference(-1054, 'Pa')).toBe('1.1 kPa');
  expect(formatDifference(-0.3, 'kg')).toBe('0.3 kg');
});

test('formatRange(low, high, unit) writes two figures', () => {
  expect(formatRange(-58, -50, 'dBFS')).toBe('-58 to -50');
});

test('formatFrequency(hz) and bandName(hz) use the names of the trade', () => {
  expect([86, 112.4, 1890, 8].map(formatFrequency)).toEqual(['86 Hz', '112 Hz', '1.9 kHz', '8.0 Hz']);
  expect([31.5, 63, 1000, 1600].map(bandName)).toEqual(['31.5', '63', '1k', '1.6k']);
});

test('formatDifference(difference, unit) says one point and two points', () => {
  expect([1, -1, 0.4, 2].map((size) => formatDifference(size, 'NC'))).toEqual([
    '1 point',
    '1 point',
    '0.4 points',
    '2 points',
  ]);
});
