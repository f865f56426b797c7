import { weightedTotal } from '@boothwright/acoustics';
import type { Level } from '@boothwright/language';
import { expect, it } from 'vitest';
import { outsideHalfWidth, outsideSpectrum } from '../../src/noise/outside-spectrum.js';
import { given, noise, place } from '../fixtures/spec-builder.js';

function shaped(level: Level, shape: string) {
  return {
    kind: 'shaped' as const,
    hours: undefined,
    name: 'road',
    nameRange: place(),
    range: place(),
    reading: given(level),
    shape: given(shape),
  };
}

it('outsideSpectrum(source) scales a shape to its dBA reading', () => {
  const levels = outsideSpectrum(shaped({ decibels: 64, weighting: 'A' }, 'road-traffic'));
  expect(weightedTotal(levels, 'A')).toBeCloseTo(64, 9);
  // Unweighted traffic falls with frequency.
  expect(levels[1]).toBeGreaterThan(levels[13] as number);
});

it('outsideSpectrum(source) takes a reading without a weighting as unweighted', () => {
  const levels = outsideSpectrum(shaped({ decibels: 64, weighting: 'none' }, 'pink'));
  expect(weightedTotal(levels, 'Z')).toBeCloseTo(64, 9);
});

it('outsideSpectrum(source) knows nothing of a reading that is no sound level', () => {
  expect(outsideSpectrum(shaped({ decibels: -60, weighting: 'FS' }, 'pink')).every((level) => level === null)).toBe(
    true,
  );
});

it('outsideSpectrum(source) takes band levels as they stand', () => {
  const source = noise('hum', [null, 50, null, null, null, null, null]);
  if (source.kind !== 'bands') throw new Error('the fixture gives bands');
  expect(outsideSpectrum(source).filter((level) => level !== null)).toHaveLength(3);
});

it('outsideHalfWidth(source) is the stated tolerance, in every third of an octave that has one', () => {
  const road = shaped({ decibels: 45, weighting: 'A' }, 'road-traffic');
  expect(new Set(outsideHalfWidth(road))).toEqual(new Set([0]));
  expect(new Set(outsideHalfWidth({ ...road, reading: { ...road.reading, tolerance: 5 } }))).toEqual(new Set([5]));
  const hum = noise('hum', [50, 50, 50, null, null, null, null]);
  if (hum.kind !== 'bands') throw new Error('the fixture gives bands');
  const { value } = hum.levels;
  const values = value.values.map((band) => (band.hz > 110 && band.hz < 140 ? { ...band, tolerance: 4 } : band));
  expect(outsideHalfWidth({ ...hum, levels: { ...hum.levels, value: { ...value, values } } }).slice(0, 9)).toEqual([
    0, 0, 0, 4, 4, 4, 0, 0, 0,
  ]);
});
