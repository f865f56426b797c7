import { expect, it } from 'vitest';
import { smallMultiples } from './plots.js';

const settings = { title: 'a < b', description: 'two charts', bandNames: ['125', '250'], highest: 80, step: 20 };

it('smallMultiples(panels, settings) draws a dot for each measured value and a line for each prediction', () => {
  const panel = { title: 'wall', measured: [0, 80], predicted: [40, 200] };
  const svg = smallMultiples([panel, panel], settings);
  expect(svg.match(/r="2.2"/g)).toHaveLength(4);
  expect(svg.match(/stroke-width="1.5" fill="none"/g)).toHaveLength(2);
  expect(svg).toContain('a &lt; b');
  expect(svg).not.toContain('NaN');
});

it('smallMultiples(panels, settings) puts the lowest value at the bottom and cuts above the highest', () => {
  const svg = smallMultiples([{ title: 'wall', measured: [0, 80], predicted: [0, 200] }], settings);
  const heights = [...svg.matchAll(/cy="([\d.]+)" r="2.2"/g)].map(([, y]) => Number(y));
  expect(heights).toEqual([110, 20]);
  expect(svg).toMatch(/d="M[\d.]+ 110L[\d.]+ 20"/);
});
