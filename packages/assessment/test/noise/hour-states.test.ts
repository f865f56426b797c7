import type { HourSpan, NoiseSource } from '@boothwright/language';
import { describe, expect, it } from 'vitest';
import { hourSpans } from '../../src/noise/hour-spans.js';
import { hourStatesOf, isThere } from '../../src/noise/hour-states.js';
import { given, impact, noise } from '../fixtures/spec-builder.js';

const hours = (...spans: [number, number][]) =>
  given<readonly HourSpan[]>(spans.map(([from, to]) => ({ from: from * 3600, to: to * 3600 })));
const during = (source: NoiseSource, ...spans: [number, number][]): NoiseSource => ({
  ...source,
  hours: hours(...spans),
});

describe('isThere(hours, hour)', () => {
  it('counts an hour of which any part is touched, and none that is only reached', () => {
    const span = hours([6.5, 8]);
    expect([5, 6, 7, 8].map((hour) => isThere(span, hour))).toEqual([false, true, true, false]);
  });

  it('goes over midnight', () => {
    const span = hours([23, 2]);
    expect([22, 23, 0, 1, 2].map((hour) => isThere(span, hour))).toEqual([false, true, true, true, false]);
    expect(isThere(undefined, 3)).toBe(true);
  });
});

it('hourStatesOf(sources) has one state for every mix that occurs', () => {
  const { stateOfHour, states } = hourStatesOf([
    noise('fridge'),
    during(noise('tram'), [5, 24]),
    during(impact('steps'), [6, 8], [18, 23]),
  ]);
  expect(stateOfHour).toHaveLength(24);
  expect(states).toEqual([[0], [0, 1], [0, 1, 2]]);
  expect([0, 4, 5, 6, 8, 18, 23].map((hour) => stateOfHour[hour])).toEqual([0, 0, 1, 2, 1, 2, 1]);
});

describe('hourSpans(wanted)', () => {
  const only = (...wanted: number[]) => Array.from({ length: 24 }, (_, hour) => wanted.includes(hour));

  it('joins hours over midnight', () => {
    expect(hourSpans(only(22, 23, 0, 1, 2, 3, 4, 5))).toEqual(['22:00 to 06:00']);
  });

  it('lists what lies apart, and says any hour for all of them', () => {
    expect(hourSpans(only(1, 2, 13))).toEqual(['01:00 to 03:00', '13:00 to 14:00']);
    expect(hourSpans(only(23))).toEqual(['23:00 to 00:00']);
    expect(hourSpans(only(...Array.from({ length: 24 }, (_, hour) => hour)))).toEqual(['any hour']);
    expect(hourSpans(only())).toEqual([]);
  });
});
