import { expect, test } from 'vitest';
import { chartResponse } from '../../src/charts/chart-response.js';
import { readSvg } from './read-svg.js';

test('chartResponse(chart) carries what is added to the direct sound, and the line of the direct sound', () => {
  const hz = [50, 63, 80, 100, 125];
  const svg = chartResponse({ title: 't', description: 'd', hz, levelDb: [-13.42, 0, 3.4, -22, 1] });
  const { series, texts, path } = readSvg(svg);
  expect(series.response).toBe('-13.4,0,3.4,-22,1');
  expect(path('direct')).toMatch(/^M\d+ [\d.]+H\d+$/);
  expect(texts).toContain('-25');
  expect(texts).toContain('5');
});
