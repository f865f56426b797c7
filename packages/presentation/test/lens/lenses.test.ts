import type { RequirementResult } from '@boothwright/assessment';
import { describe, expect, it } from 'vitest';
import { boothLens, variantLens } from '../../src/index.js';
import { requirements } from '../fixtures/sample-requirements.js';
import { sampleResult } from '../fixtures/sample-result.js';

const withVerdicts = (...verdicts: RequirementResult['verdict'][]) => ({
  ...sampleResult,
  requirements: verdicts.map((verdict) => ({ ...requirements[0]!, verdict })),
});
const signOf = (...verdicts: RequirementResult['verdict'][]) =>
  boothLens('alcove', withVerdicts(...verdicts))!.split(' · ')[0];

describe('boothLens', () => {
  it('tells the verdict and the levels in one line', () => {
    expect(boothLens('alcove', sampleResult)).toMatchInlineSnapshot(
      `"✗ 5 of 8 requirements missed, 1 not assessed · 26 dBA (23 to 29) inside · room tone -54 dBFS (-58 to -50) · voice outside 36 dBA (33 to 39)"`,
    );
  });

  it('tells every verdict in words beside its sign', () => {
    expect(signOf('met', 'missed', 'missed')).toBe('✗ 2 of 3 requirements missed');
    expect(signOf('met', 'missed', 'not-assessed')).toBe('✗ 1 of 3 requirements missed, 1 not assessed');
    expect(signOf('met', 'not-assessed')).toBe('? 1 of 2 requirements not assessed');
    expect(signOf('met', 'met')).toBe('✓ all 2 requirements met');
    expect(signOf('met')).toBe('✓ its requirement met');
    expect(signOf()).toBe('nothing required');
  });

  it('counts what is asked of this booth and of every booth', () => {
    const [first, second, third] = requirements;
    const results = {
      ...sampleResult,
      requirements: [
        { ...first!, booth: 'alcove', verdict: 'met' as const },
        { ...second!, booth: null, verdict: 'met' as const },
        { ...third!, booth: 'other', verdict: 'missed' as const },
      ],
    };
    expect(boothLens('alcove', results)).toMatch(/^✓ all 2 requirements met/);
  });

  it('has no answer for a booth that is not there', () => {
    expect(boothLens('shed', sampleResult)).toBeUndefined();
  });
});

describe('variantLens', () => {
  it('tells which verdicts it turns', () => {
    expect(variantLens('night', sampleResult)).toMatchInlineSnapshot(
      `"✗ 4 of 8 requirements missed, 1 not assessed · now met: room-tone <= NC 15"`,
    );
  });

  it('says so when it turns none, and when it changes nothing', () => {
    const { night } = sampleResult.variants;
    const of = (changes: typeof night extends undefined ? never : NonNullable<typeof night>['changes']) => ({
      ...sampleResult,
      variants: { same: { ...night!, requirements, changes } },
    });
    expect(variantLens('same', of(night!.changes))).toMatch(/ · turns no verdict$/);
    expect(variantLens('same', of([]))).toMatch(/ · changes nothing$/);
  });

  it('names two and counts the others', () => {
    const missed = requirements.map((entry) => ({ ...entry, verdict: 'missed' as const, margin: -1 }));
    const met = requirements.map((entry) => ({ ...entry, verdict: 'met' as const, margin: 1 }));
    const results = {
      ...sampleResult,
      requirements: missed,
      variants: { all: { ...sampleResult.variants.night!, requirements: met, changes: [] } },
    };
    expect(variantLens('all', results)).toMatch(/now met: [^,]+, .+ and 6 more$/);
  });

  it('has no answer for a variant that is not there', () => {
    expect(variantLens('day', sampleResult)).toBeUndefined();
  });
});
