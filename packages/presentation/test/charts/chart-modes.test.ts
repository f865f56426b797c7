import { expect, test } from 'vitest';
import { chartModes } from '../../src/charts/chart-modes.js';
import { readSvg } from './read-svg.js';

const mode = (hz: number, decayS: number | null, onVoice: readonly 'low-voice'[] = []) => ({
  hz,
  order: [1, 0, 0] as const,
  decayS,
  lowS: decayS,
  highS: decayS,
  onVoice,
});
const chart = {
  title: 'modes',
  description: 'three modes',
  modes: [mode(74, 0.09), mode(128, 0.14, ['low-voice']), mode(150, null, ['low-voice'])],
  gaps: [{ fromHz: 74, toHz: 128 }],
};

test('chartModes(chart) carries the modes that a voice meets, the others, and the stretches without any', () => {
  expect(readSvg(chartModes(chart)).series).toEqual({ 'on-voice': '128,150', other: '74', gap: '74,128' });
});

test('chartModes(chart) lets a mode that nothing damps reach the top', () => {
  const heights = [...(readSvg(chartModes(chart)).path('on-voice') ?? '').matchAll(/V([\d.]+)/g)].map(([, y]) =>
    Number(y),
  );
  expect(heights).toHaveLength(2);
  expect(heights[1]).toBe(22);
  expect(heights[0]).toBeGreaterThan(22);
});

test('chartModes(chart) of a booth without modes is an empty frame', () => {
  expect(chartModes({ ...chart, modes: [], gaps: [] })).not.toMatch(/NaN|Infinity/);
});
