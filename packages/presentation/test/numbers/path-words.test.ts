import { expect, test } from 'vitest';
import { isPathOf, limiterWords, pathWords } from '../../src/numbers/path-words.js';

const leaf = { id: 'door:entry', kind: 'door', name: 'entry' };
const threshold = { id: 'door:entry:threshold', kind: 'door-seal', name: 'entry threshold' };
const back = { id: 'face:back', kind: 'face', name: 'back' };

test('pathWords(path) names faces, leaves and seals as a builder does', () => {
  expect([leaf, threshold, back, { id: 'face:roof', kind: 'face', name: 'roof' }].map(pathWords)).toEqual([
    'door leaf entry',
    'threshold gap of door entry',
    'back wall',
    'roof',
  ]);
});

test('limiterWords(id) names a path by its identifier and anything else as it is called', () => {
  expect(['face:back', 'door:entry', 'door:entry:perimeter', 'vent:intake', 'no-fan'].map(limiterWords)).toEqual([
    'back wall',
    'door leaf entry',
    'perimeter seal of door entry',
    'vent intake',
    'no fan',
  ]);
});

test('isPathOf(opening, path) counts the seals of a door in and a face of the same name out', () => {
  expect([leaf, threshold].map((path) => isPathOf('entry', path))).toEqual([true, true]);
  expect(isPathOf('back', back)).toBe(false);
  expect(isPathOf('threshold', threshold)).toBe(false);
});
