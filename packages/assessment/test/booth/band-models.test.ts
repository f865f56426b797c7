import { expect, it } from 'vitest';
import { bandModelsOf } from '../../src/booth/band-models.js';

it('bandModelsOf(limit, firstMode, schroeder) hands over from half the first mode to the band that holds it', () => {
  const models = bandModelsOf(75, 150, 300);
  expect(models.slice(0, 6)).toEqual([
    'small-enclosure',
    'small-enclosure',
    'hand-over',
    'hand-over',
    'hand-over',
    'hand-over',
  ]);
  expect(models[6]).toBe('few-modes');
  expect(models[7]).toBe('few-modes');
  expect(models[8]).toBe('statistical');
});

it('bandModelsOf(limit, firstMode, schroeder) has no closed-box band in a large room', () => {
  expect(bandModelsOf(15, 30, 40).every((model) => model === 'statistical')).toBe(true);
});
