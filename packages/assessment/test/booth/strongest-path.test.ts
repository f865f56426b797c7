import { airProperties } from '@boothwright/acoustics';
import { expect, it } from 'vitest';
import { pathsOf } from '../../src/booth/paths.js';
import { strongestPath } from '../../src/booth/strongest-path.js';
import { createMemo } from '../../src/memo/memo.js';
import { booth } from '../fixtures/spec-builder.js';

const box = booth();
const paths = pathsOf(box, airProperties({ temperature: 20, relativeHumidity: 0.5 }), createMemo()).map(
  (path) => path.result,
);
const weights = (given: Readonly<Record<string, number>>) => paths.map((path) => given[path.id] ?? 0);

it('strongestPath(booth, paths, weights) counts faces of one build-up together', () => {
  const shared = weights({ 'face:left': 0.3, 'face:right': 0.2, 'door:entry:threshold': 0.4 });
  expect(strongestPath(box, paths, shared)).toMatchObject({
    id: 'faces:shell',
    words: 'the 5 faces of shell',
    weight: 0.5,
  });
});

it('strongestPath(booth, paths, weights) names a single path by its words', () => {
  expect(strongestPath(box, paths, weights({ 'door:entry:threshold': 0.6 }))?.words).toBe('the gap at entry threshold');
  expect(strongestPath(box, paths, weights({ 'face:floor': 0.6 }))?.words).toBe('the floor');
});

it('strongestPath(booth, paths, weights) has no answer when nothing weighs', () => {
  expect(strongestPath(box, paths, weights({}))).toBeNull();
});
