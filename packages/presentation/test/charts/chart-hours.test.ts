import type { HoursResult } from '@boothwright/assessment';
import { expect, test } from 'vitest';
import { chartHours } from '../../src/charts/chart-hours.js';
import { ranged } from '../fixtures/sample-basics.js';
import { readSvg } from './read-svg.js';

const state = (dBA: number, verdict: 'met' | 'missed') => ({
  sources: ['tram'],
  notPredicted: [],
  dBA: ranged(dBA, 5),
  nc: null,
  verdicts: [verdict],
});
const hours: HoursResult = {
  stateOfHour: Array.from({ length: 24 }, (_, hour) => (hour >= 6 && hour < 22 ? 1 : 0)),
  states: [state(18, 'met'), state(31, 'missed')],
  requirements: [
    { text: 'require room-tone <= NC 15', range: { file: 'a', from: 0, to: 1 }, hoursMet: 8, met: [], words: '' },
  ],
  session: { startsMinutes: 22 * 60, endsMinutes: 25 * 60, verdicts: ['met'], words: '' },
};
const chart = { title: 't', description: 'd', hours };

test('chartHours(chart) carries the level of every hour and the verdict on it', () => {
  const svg = chartHours(chart);
  const levels = readSvg(svg).series.inside!.split(',');
  expect(levels).toHaveLength(24);
  expect([levels[5], levels[6], levels[21], levels[22]]).toEqual(['18', '31', '31', '18']);
  expect(svg).toContain(`data-verdicts="${hours.stateOfHour.map((at) => (at === 0 ? 'met' : 'missed')).join(',')}"`);
  expect(readSvg(svg).path('met')?.match(/M/g)).toHaveLength(8);
  expect(readSvg(svg).path('missed')?.match(/M/g)).toHaveLength(16);
});

test('chartHours(chart) draws a session past midnight at both ends of the day', () => {
  expect(readSvg(chartHours(chart)).series.session).toBe('22,24,0,1');
});

test('chartHours(chart) says nothing of verdicts where nothing is asked, and breaks where a level is not known', () => {
  const quiet = { ...state(18, 'met'), verdicts: [] };
  const unknown = { ...quiet, dBA: null };
  const svg = chartHours({
    ...chart,
    hours: { ...hours, states: [quiet, unknown], requirements: [], session: null },
  });
  expect(svg).not.toMatch(/class="(met|missed|session)"|NaN|Infinity/);
  expect(readSvg(svg).path('inside')?.match(/M/g)).toHaveLength(2);
});
