import { expect, it } from 'vitest';
import { levelsOnGrid } from '../../src/bands/level-table.js';
import { given, octaves } from '../fixtures/spec-builder.js';

it('levelsOnGrid(table) spreads an octave over three thirds of equal energy', () => {
  const levels = levelsOnGrid(octaves([null, 60, null, null, null, null, null]).value);
  // 60 - 10 lg 3
  expect(levels.slice(3, 6).map((level) => level?.toFixed(2))).toEqual(['55.23', '55.23', '55.23']);
});

it('levelsOnGrid(table) leaves a band that is not given unknown, not silent', () => {
  const levels = levelsOnGrid(octaves([null, 60, null, null, null, null, null]).value);
  expect(levels.filter((level) => level === null)).toHaveLength(18);
});

it('levelsOnGrid(table) takes a third as it is, named by its nominal centre', () => {
  const range = { file: 'test.booth', from: 0, to: 1 };
  const table = given({ grid: 'third' as const, values: [{ hz: 63, value: 41, range }] }).value;
  expect(levelsOnGrid(table)[1]).toBe(41);
  expect(levelsOnGrid(table)[0]).toBeNull();
});
