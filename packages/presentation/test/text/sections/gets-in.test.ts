import type { BoothResult, LevelTotals, ResultDocument } from '@boothwright/assessment';
import { expect, test } from 'vitest';
import { getsInSection } from '../../../src/text/sections/gets-in.js';
import { sampleResult } from '../../fixtures/sample-result.js';

const style = { colour: false, width: 100, detail: 'short' } as const;
const [name, sample] = Object.entries(sampleResult.booths)[0] as [string, BoothResult];

/** The sample with air that hisses at 1 kHz, added to the total. */
function hissing(level: number): ResultDocument {
  const byBand = (base: LevelTotals) => base.byBand.map((each, band) => (band >= 12 && band <= 14 ? level : each));
  const airAtOpenings: LevelTotals = {
    ...sample.noise.total,
    byBand: sample.noise.total.byBand.map((_, band) => (band >= 12 && band <= 14 ? level : -20)),
  };
  const noise = {
    ...sample.noise,
    airAtOpenings,
    total: { ...sample.noise.total, byBand: byBand(sample.noise.total) },
  };
  return { ...sampleResult, booths: { [name]: { ...sample, noise } } };
}

const textOf = (result: ResultDocument) => getsInSection(name, result.booths[name] as BoothResult, result, style) ?? '';

test('getsInSection(...) names the air where it is louder than what comes through the walls', () => {
  const text = textOf(hissing(50));
  expect(text).toContain('Worst band against NC 15: 1k Hz');
  expect(text.replace(/\s+/g, ' ')).toContain('mostly the air at its openings');
  expect(text).toMatch(/air at its openings +\d/);
});

test('getsInSection(...) leaves the source and its path where they are louder', () => {
  const text = textOf(sampleResult).replace(/\s+/g, ' ');
  expect(text).toContain('mostly tram');
  expect(text).not.toContain('mostly the air');
});
