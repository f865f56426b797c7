import type { RequirementResult, ResultDocument } from '@boothwright/assessment';
import { describe, expect, it } from 'vitest';
import { inShortSection } from '../../../src/text/sections/in-short.js';
import { variantEffects } from '../../../src/text/sections/variant-effects.js';
import { sampleResult } from '../../fixtures/sample-result.js';

const style = { colour: false, width: 100, detail: 'short' } as const;
const [sample] = sampleResult.requirements as readonly [RequirementResult, ...RequirementResult[]];
const asked = (changes: Partial<RequirementResult>): RequirementResult => ({ ...sample, ...changes });

const floor = asked({
  kind: 'floor-load',
  text: 'require floor-load <= 1.5 kPa',
  verdict: 'missed',
  withinRange: false,
  margin: -1,
  unit: 'kPa',
});
const tone = asked({
  text: 'require room-tone <= NC 15',
  verdict: 'missed',
  withinRange: false,
  margin: -3,
  unit: 'NC',
});
const voice = asked({
  kind: 'voice-outside',
  text: 'require voice-outside <= 35 dBA',
  verdict: 'missed',
  withinRange: true,
  margin: -2,
  unit: 'dBA',
});
const co2 = asked({
  kind: 'co2',
  text: 'require co2 <= 1000 ppm',
  verdict: 'met',
  withinRange: true,
  margin: 20,
  unit: 'ppm',
});
const only = (requirements: RequirementResult[], changes: Partial<ResultDocument> = {}): ResultDocument => ({
  ...sampleResult,
  booths: {},
  variants: {},
  requirements,
  ...changes,
});
/** One line, whatever the width breaks. */
const text = (result: ResultDocument) => inShortSection(result, style)?.replace(/\s+/g, ' ');

describe('inShortSection(result, style)', () => {
  it('tells what fails whatever the range from what may turn out otherwise, the floor first', () => {
    const short = text(only([tone, floor, voice, co2]));
    expect(short).toContain('Missed over the whole range: floor-load <= 1.5 kPa by 1.0 kPa; room-tone <= NC 15 by 3');
    expect(short).toContain('favourable end of its range would do: voice-outside <= 35 dBA by 2 dB');
    expect(short).toContain('Met, but not at the unfavourable end of the range: co2 <= 1000 ppm with 20 ppm to spare');
    expect(short).toContain('structural engineer before anything is bought');
    expect(text(only([tone]))).not.toContain('structural engineer');
  });

  it('names the variant that meets most, and what it moves away from', () => {
    const variant = (requirements: RequirementResult[]) => ({
      ...(sampleResult.variants.night as ResultDocument['variants'][string]),
      title: null,
      requirements,
      changes: [],
    });
    const heavier = asked({ ...floor, margin: -2, value: { value: 3.5, low: 3, high: 4, basis: '' } });
    const base = only([tone, { ...floor, value: { value: 2.5, low: 2, high: 3, basis: '' } }], {
      variants: {
        same: variant([tone, floor]),
        quiet: variant([{ ...tone, verdict: 'met', margin: 1 }, heavier]),
      },
    });
    expect(text(base)).toContain(
      'No variant of the text meets everything asked; quiet comes nearest and meets 1 of 2: it meets room-tone <= NC 15',
    );
    expect(text(base)).toContain('It changes `shell.air = 50 mm`.');
    expect(text(base)).toMatch(/moves away from floor-load <= 1\.5 kPa \(2\.5 kPa becomes 3\.5 kPa\)/);
    const effects = variantEffects(base, base.variants.quiet as ResultDocument['variants'][string]);
    expect(effects.gained).toHaveLength(1);
    expect(effects.farther).toHaveLength(1);
    expect(effects.nearer).toHaveLength(0);
  });

  it('says nothing of a text that asks for nothing', () => {
    expect(inShortSection(only([]), style)).toBeUndefined();
  });
});
