import { expect, test } from 'vitest';
import { chartLevels } from '../../src/charts/chart-levels.js';
import { octaveCentres } from '../../src/numbers/octaves.js';
import { readSvg } from './read-svg.js';

const chart = {
  title: 'tram',
  description: 'tram: outside 45 dBA, inside 26 dBA',
  nominalHz: octaveCentres,
  series: [
    { label: 'outside', role: 'before' as const, levelsDb: [58, 52, 46, 42, 38, 33, 27] },
    { label: 'inside', role: 'behind' as const, levelsDb: [44, 42, 22, null, 4, -6.25, null] },
    { label: 'NC 15', role: 'target' as const, levelsDb: [47, 36, 29, 22, 17, 14, 12] },
  ],
};

test('chartLevels(chart) carries the figures of outside, inside and target', () => {
  expect(readSvg(chartLevels(chart)).series).toEqual({
    before: '58,52,46,42,38,33,27',
    behind: '44,42,22,,4,-6.2,',
    target: '47,36,29,22,17,14,12',
  });
});

test('chartLevels(chart) breaks a line where nothing is known', () => {
  expect(readSvg(chartLevels(chart)).path('behind')?.match(/M/g)).toHaveLength(2);
  expect(readSvg(chartLevels(chart)).path('before')?.match(/M/g)).toHaveLength(1);
});

test('chartLevels(chart) reaches below 0 dB when a level does', () => {
  expect(readSvg(chartLevels(chart)).texts).toContain('-10');
});

test('chartLevels(chart) draws nothing but the frame when no level is known', () => {
  const empty = chartLevels({
    ...chart,
    series: [{ label: 'inside', role: 'behind', levelsDb: octaveCentres.map(() => null) }],
  });
  expect(readSvg(empty).path('behind')).toBe('');
  expect(empty).not.toMatch(/NaN|Infinity/);
});

test('chartLevels(chart) tells several further lines apart by colour and dash', () => {
  const further = ['fan', 'tram', 'hum'].map((label, index) => ({
    label,
    role: 'further' as const,
    levelsDb: octaveCentres.map(() => 10 * index),
  }));
  const svg = chartLevels({ ...chart, series: [...chart.series, ...further] });
  expect(readSvg(svg).series['further-3']).toBe('20,20,20,20,20,20,20');
  const looks = [...svg.matchAll(/class="further[^"]*"[^>]*stroke="([^"]+)"[^>]*stroke-dasharray="([^"]+)"/g)];
  expect(new Set(looks.map(([, colour]) => colour)).size).toBe(3);
  expect(new Set(looks.map(([, , dash]) => dash)).size).toBe(3);
});
