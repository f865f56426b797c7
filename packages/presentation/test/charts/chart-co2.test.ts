import { expect, test } from 'vitest';
import { chartCo2 } from '../../src/charts/chart-co2.js';
import { alcove } from '../fixtures/sample-booth.js';
import { readSvg } from './read-svg.js';

const air = alcove.air!;

test('chartCo2(chart) carries a curve for each setting, thinned, with first and last point kept', () => {
  const { series } = readSvg(chartCo2({ title: 'CO₂', description: 'd', air, limitPpm: 1000 }));
  const on = (series['fan-high'] ?? '').split(',').map(Number);
  expect(on).toHaveLength(21);
  expect([on[0], on.at(-1)]).toEqual([600, 1155]);
  expect((series['fan-low'] ?? '').split(',').at(-1)).toBe('1500');
  expect((series['fan-off'] ?? '').split(',').at(-1)).toBe('9000');
  expect(series.limit).toBe('1000');
});

test('chartCo2(chart) stays below 4.5 kB with its curves for off, low and high', () => {
  expect(chartCo2({ title: 'CO₂ in alcove', description: 'x'.repeat(300), air, limitPpm: 1000 }).length).toBeLessThan(
    4608,
  );
});

test('chartCo2(chart) without a fan shows one curve', () => {
  expect(
    Object.keys(
      readSvg(chartCo2({ title: 't', description: 'd', air: { ...air, fanOn: null, fanLow: null, fanHigh: null } }))
        .series,
    ),
  ).toEqual(['fan-off']);
});

test('chartCo2(chart) lets a closed box leave the picture at the top, so that the fans stay apart', () => {
  const { path, texts } = readSvg(chartCo2({ title: 't', description: 'd', air, limitPpm: 1000 }));
  expect(Math.max(...texts.map(Number).filter(Number.isFinite))).toBeLessThanOrEqual(3000);
  // The last point stands on the top edge, 22 px, long before the right one.
  const [, x, y] = /([\d.]+),([\d.]+)$/.exec(path('fan-off')!)!;
  expect(Number(y)).toBeCloseTo(22, 0);
  expect(Number(x)).toBeLessThan(300);
});
