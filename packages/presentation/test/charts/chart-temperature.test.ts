import { expect, test } from 'vitest';
import { chartTemperature } from '../../src/charts/chart-temperature.js';
import { alcove } from '../fixtures/sample-booth.js';
import { readSvg } from './read-svg.js';

const heat = alcove.air!.heat!;

test('chartTemperature(chart) carries a curve for each setting and the limit', () => {
  const { series, texts } = readSvg(chartTemperature({ title: 't', description: 'd', heat, limitK: 4 }));
  for (const { setting, endRiseK } of heat.bySetting)
    expect(series[`fan-${setting}`]?.split(',').at(-1)).toBe(String(Math.round(endRiseK * 10) / 10));
  expect(series.limit).toBe('4');
  expect(texts).toContain('limit 4');
});

test('chartTemperature(chart) shows a booth that gets cooler', () => {
  const cooler = { ...heat, bySetting: heat.bySetting.map((each) => ({ ...each, riseK: each.riseK.map((k) => -k) })) };
  expect(readSvg(chartTemperature({ title: 't', description: 'd', heat: cooler })).texts).toContain('-10');
});
