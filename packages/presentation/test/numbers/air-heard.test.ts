import type { BoothResult } from '@boothwright/assessment';
import { expect, test } from 'vitest';
import { airHeardText } from '../../src/numbers/air-heard.js';
import { sampleResult } from '../fixtures/sample-result.js';

const sample = Object.values(sampleResult.booths)[0] as BoothResult;
/** 1 kHz alone, where A-weighting takes nothing off. */
const tone = (level: number) => Array.from({ length: 21 }, (_, band) => (band === 13 ? level : null));
const withParts = (airParts: BoothResult['noise']['airParts']): BoothResult => ({
  ...sample,
  noise: { ...sample.noise, airParts },
});

test('airHeardText(vent, booth) adds the parts of its own vent', () => {
  const booth = withParts([
    { vent: 'in', way: 'duct', byBand: tone(20) },
    { vent: 'in', way: 'grille', byBand: tone(20) },
    { vent: 'out', way: 'duct-end', byBand: tone(60) },
  ]);
  expect(airHeardText('in', booth)).toBe('its air is heard inside at 23 dBA');
  expect(airHeardText('out', booth)).toBe('its air is heard inside at 60 dBA');
});

test('airHeardText(vent, booth) names nothing below zero, and nothing where no air moves', () => {
  expect(airHeardText('in', withParts([{ vent: 'in', way: 'grille', byBand: tone(-31) }]))).toBe(
    'its air is heard inside at less than 0 dBA',
  );
  expect(airHeardText('in', withParts([]))).toBeUndefined();
});
