import { scaleLinear, scaleLog } from 'd3-scale';
import { expect, test } from 'vitest';
import { linearScale, logScale } from '../../src/charts/scales.js';

const values = [-3, 0, 1, 7.5, 50, 440, 5000];

test('linearScale(domain, range) maps as the library of charts does, upwards and downwards', () => {
  for (const range of [
    [36, 450],
    [198, 22],
  ] as const) {
    const theirs = scaleLinear().domain([-20, 60]).range(range);
    for (const value of values) expect(linearScale([-20, 60], range)(value)).toBeCloseTo(theirs(value), 9);
  }
});

test('logScale(domain, range) maps as the library of charts does', () => {
  const theirs = scaleLog().domain([47, 5300]).range([36, 450]);
  for (const value of values.filter((each) => each > 0))
    expect(logScale([47, 5300], [36, 450])(value)).toBeCloseTo(theirs(value), 9);
});
