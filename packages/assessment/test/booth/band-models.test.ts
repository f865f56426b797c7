import { expect, it } from 'vitest';
import { bandModelsOf } from '../../src/booth/band-models.js';

it('bandModelsOf(firstMode, schroeder) hands over in the band that holds the first mode', () => {
  const models = bandModelsOf(86, 300);
  expect(models.slice(0, 4)).toEqual(['small-enclosure', 'small-enclosure', 'hand-over', 'few-modes']);
  expect(models[7]).toBe('few-modes');
  expect(models[8]).toBe('statistical');
  expect(models.filter((model) => model === 'hand-over')).toHaveLength(1);
});

it('bandModelsOf(firstMode, schroeder) has no closed-box band in a large room', () => {
  expect(bandModelsOf(30, 40).every((model) => model === 'statistical')).toBe(true);
});
