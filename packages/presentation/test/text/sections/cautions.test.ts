import { describe, expect, it } from 'vitest';
import { renderCheckText } from '../../../src/text/render-check-text.js';
import { cautionsSection, deadlySection } from '../../../src/text/sections/cautions.js';
import { inShortSection } from '../../../src/text/sections/in-short.js';
import { sampleResult } from '../../fixtures/sample-result.js';

const style = { colour: false, width: 100, detail: 'short' } as const;

describe('hazards that can kill', () => {
  it('stand before what to change and before every other caution', () => {
    const text = renderCheckText(sampleResult, [], style);
    const deadly = text.indexOf('\nHazards that can kill\n');
    expect(deadly).toBeGreaterThan(0);
    expect(deadly).toBeLessThan(text.indexOf('\nWhat to change first\n'));
    expect(deadly).toBeLessThan(text.indexOf('\nOther cautions\n'));
  });

  it('are named in one line at the top of the summary', () => {
    const [, first] = inShortSection(sampleResult, style)?.split('\n') ?? [];
    expect(first).toBe('  - Hazards that can kill, see there: fresh air stops when the fan stops.');
  });

  it('are not told twice', () => {
    expect(deadlySection(sampleResult, style)).toContain('Fresh air stops');
    expect(deadlySection(sampleResult, style)).not.toContain('tips over');
    expect(cautionsSection(sampleResult, style)).not.toContain('Fresh air stops');
    expect(cautionsSection(sampleResult, style)).toContain('tips over');
  });

  it('leave neither section nor line where the booth has none', () => {
    const none = { ...sampleResult, cautions: sampleResult.cautions.filter(({ id }) => id !== 'fan-off') };
    expect(deadlySection(none, style)).toBeUndefined();
    expect(inShortSection(none, style)).not.toContain('can kill');
    expect(cautionsSection(none, style)).toMatch(/^Cautions\n/);
  });
});

describe('a text of which no requirement could be read', () => {
  it('is not said to state none', () => {
    const lost = { part: 'require', name: null, message: 'no unit', range: sampleResult.cautions[0]!.range } as const;
    const text = renderCheckText({ ...sampleResult, requirements: [], unread: [lost] }, [], style);
    expect(text).toContain('NOT ASSESSED: the one requirement of the text could not be read');
    expect(text).not.toContain('no requirement is stated');
  });

  it('has no empty section of cautions', () => {
    expect(cautionsSection({ ...sampleResult, cautions: [] }, style)).toBeUndefined();
  });
});
