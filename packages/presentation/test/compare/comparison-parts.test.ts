import type { ComparisonDocument, JudgedSide, RequirementChange } from '@boothwright/assessment';
import { describe, expect, it } from 'vitest';
import { comparisonParts } from '../../src/compare/comparison-parts.js';
import { renderComparisonMarkdown } from '../../src/compare/render-comparison-markdown.js';

const side = (value: number, verdict: JudgedSide['verdict'] = 'met'): JudgedSide => ({
  text: 'require co2 <= 1000 ppm',
  verdict,
  value,
  limit: 1000,
  margin: 1000 - value,
  atLeast: false,
});
const change = (more: Partial<RequirementChange>): RequirementChange => ({
  turn: 'worse',
  kind: 'co2',
  booth: 'den',
  unit: 'ppm',
  old: side(700),
  new: side(720),
  limitChanged: false,
  steps: 0.2,
  ...more,
});
const comparison = (requirements: readonly RequirementChange[], message?: string): ComparisonDocument => {
  const told = { gained: [], lost: [], changed: [] };
  const name = { name: 'a.booth', variant: null, unread: [] };
  return {
    schema: 'boothwright-comparison/1',
    old: name,
    new: name,
    sameFacts: false,
    sameEffect: false,
    facts: [],
    renamed: [],
    requirements,
    effects: [],
    bands: [],
    findings: (message === undefined
      ? told
      : { ...told, lost: [{ message }] }) as unknown as ComparisonDocument['findings'],
    cautions: told,
    steps: [],
  };
};
const requirementsOf = (changes: readonly RequirementChange[], full = false) => {
  const [part] = comparisonParts(comparison(changes), full);
  if (part === undefined || !('rows' in part)) throw new Error('requirements come first');
  return { turns: part.rows.map(([turn]) => turn), keptBack: part.keptBack };
};

describe('requirements of a comparison', () => {
  it('are counted where the verdict stays and the margin hardly moves', () => {
    const lost = change({ turn: 'lost', steps: 0.1, new: side(1001, 'missed') });
    expect(requirementsOf([lost, change({ steps: 0.49 }), change({ turn: 'better', steps: 0 })])).toEqual({
      turns: ['LOST'],
      keptBack: '2 more keep their verdicts and hardly move',
    });
    expect(requirementsOf([change({})])).toEqual({
      turns: [],
      keptBack: '1 keeps its verdict and hardly moves',
    });
  });

  it('are told where they move, where the limit did, where nothing tells how far, and all in full', () => {
    const told = [
      change({ steps: 0.5 }),
      change({ limitChanged: true }),
      change({ steps: null }),
      change({ turn: 'other', steps: 0 }),
    ];
    expect(requirementsOf(told)).toEqual({ turns: ['worse', 'worse', 'worse', 'changed'], keptBack: undefined });
    expect(requirementsOf([change({})], true)).toEqual({ turns: ['worse'], keptBack: undefined });
  });
});

it('in Markdown a line of the text within a message is code, and the rest shows as it is', () => {
  const shown = renderComparisonMarkdown(comparison([], 'a * b where `require co2 <= 1000 ppm` is asked'));
  expect(shown).toContain('- a \\* b where `require co2 <= 1000 ppm` is asked');
});
