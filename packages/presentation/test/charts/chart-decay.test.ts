import type { BandDecay, DecayMethod } from '@boothwright/assessment';
import { expect, test } from 'vitest';
import { chartDecay } from '../../src/charts/chart-decay.js';
import { readSvg } from './read-svg.js';

const band = (hz: number, seconds: number | null, method: DecayMethod): BandDecay => ({
  hz,
  seconds,
  lowS: seconds === null ? null : seconds * 0.8,
  highS: seconds === null ? null : seconds * 1.2,
  method,
  note: '',
});
const decay = [
  band(50, null, 'none'),
  band(63, 0.21, 'modes'),
  band(80, 0.1804, 'modes'),
  band(100, null, 'none'),
  band(125, 0.12, 'both'),
  band(160, 0.1, 'statistical'),
  band(200, 0.09, 'statistical'),
  band(250, 0.08, 'statistical'),
  band(315, 0.08, 'statistical'),
];
const chart = { title: 'Decay', description: 'd', decay };

test('chartDecay(chart) carries the seconds by band, to the thousandth, and which model speaks in how many', () => {
  const { series, hz } = readSvg(chartDecay({ ...chart, limits: [{ hz: 125, seconds: 0.3 }] }));
  expect(hz).toBe('50,63,80,100,125,160,200,250,315');
  expect(series.decay).toBe(',0.21,0.18,,0.12,0.1,0.09,0.08,0.08');
  expect(series.models).toBe('none 1,modes 2,none 1,both 1,statistical 4');
  expect(series.limit).toBe('0.3');
});

test('chartDecay(chart) breaks line and range where nothing is known', () => {
  const svg = readSvg(chartDecay(chart));
  expect(svg.path('decay')?.match(/M/g)).toHaveLength(2);
  expect(svg.path('range')?.match(/M/g)).toHaveLength(2);
  expect(chartDecay({ ...chart, decay: decay.map(({ hz }) => band(hz, null, 'none')) })).not.toMatch(/NaN|Infinity/);
});

test('chartDecay(chart) names a model only where its bands have room for the name', () => {
  const { texts } = readSvg(chartDecay(chart));
  expect(texts).toContain('even field');
  expect(texts).toContain('single modes');
  expect(texts).not.toContain('dry field');
});

test('chartDecay(chart) keeps a limit below the names of the models', () => {
  const top = 22;
  const d = readSvg(chartDecay({ ...chart, limits: [{ hz: 125, seconds: 0.3 }] })).path('limit')!;
  const height = Number(/ ([\d.]+)h/.exec(d)![1]);
  expect(height - top).toBeGreaterThan(12);
});
