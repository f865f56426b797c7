import { expect, test } from 'vitest';
import { legend } from '../../src/charts/legend.js';
import { readSvg } from './read-svg.js';

const entries = (...labels: string[]) => labels.map((label) => ({ label, colour: '#000000' }));

test('legend(entries, right) leaves names alone that fit', () => {
  expect(readSvg(legend(entries('inside', 'NC 15'), 460, 'level, dB')).texts).toEqual(['inside', 'NC 15']);
});

test('legend(entries, right) cuts the longest names and keeps off the name of the axis', () => {
  const svg = legend(
    entries('all of it', 'NC 15', 'washing machine next door', 'neighbour with a drum', 'fan'),
    460,
    'level, dB',
  );
  const { texts } = readSvg(svg);
  expect(texts.slice(0, 2)).toEqual(['all of it', 'NC 15']);
  expect(texts[2]).toMatch(/^washing.*…$/);
  expect(texts[4]).toBe('fan');
  const starts = [...svg.matchAll(/M([\d.]+) 7h14/g)].map(([, at]) => Number(at));
  expect(Math.min(...starts)).toBeGreaterThanOrEqual('level, dB'.length * 6);
  expect(starts.at(-1)! + 17 + texts.at(-1)!.length * 6).toBeLessThanOrEqual(460);
});
