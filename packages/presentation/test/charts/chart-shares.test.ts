import { expect, test } from 'vitest';
import { chartShares } from '../../src/charts/chart-shares.js';
import { hoverSize, margins } from '../../src/charts/frame.js';
import { palette } from '../../src/charts/palette.js';
import { readSvg } from './read-svg.js';

const chart = {
  title: 'By which path',
  description: 'door 40 %',
  columns: ['500', '1k', '2k'],
  parts: [
    { label: 'door', shares: [0.4, 1, null] },
    { label: 'walls', shares: [0.6, 0, null] },
  ],
};

test('chartShares(chart) stacks the parts of a column to 100 %', () => {
  const svg = chartShares(chart);
  const heights = [...svg.matchAll(/d="([^"]*)"[^>]*data-values/g)].map(([, path = '']) =>
    [...path.matchAll(/z?M[^v]*v([\d.]+)/g)].map(([, height]) => Number(height)),
  );
  const [door = [], walls = []] = heights;
  const whole = hoverSize.height - margins.top - margins.bottom;
  expect(door[0]! + walls[0]!).toBeCloseTo(whole, 0);
  expect(door[0]! / whole).toBeCloseTo(0.4, 2);
  expect(door[1]).toBeCloseTo(whole, 0);
});

test('chartShares(chart) draws what is left over grey, whatever its place', () => {
  const svg = chartShares({
    ...chart,
    parts: [...chart.parts, { label: 'the rest', shares: [0, 0, null], rest: true }],
  });
  const fills = [...svg.matchAll(/class="share" d="[^"]*" fill="([^"]+)"/g)].map(([, fill]) => fill);
  expect(fills[2]).toBe(palette.grey);
  expect(fills.slice(0, 2)).not.toContain(palette.grey);
});

test('chartShares(chart) leaves out what is zero or not assessed', () => {
  const paths = [...chartShares(chart).matchAll(/class="share" d="([^"]*)"/g)].map(([, path = '']) => path);
  expect(paths.map((path) => path.match(/M/g)?.length)).toEqual([2, 1]);
  expect(readSvg(chartShares(chart)).texts).toEqual(expect.arrayContaining(['door', 'walls', '500', '1k', '2k']));
});
