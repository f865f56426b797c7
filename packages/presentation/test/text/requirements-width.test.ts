import { expect, test } from 'vitest';
import { displayWidth } from '../../src/text/display-width.js';
import { requirementsSection } from '../../src/text/sections/requirements.js';
import { sampleResult } from '../fixtures/sample-result.js';

test('requirementsSection() shortens a long requirement before it gives up what limits it', () => {
  const long = 'require reverberation within 0.08 s .. 0.20 s from 160 Hz to 4 kHz';
  const [first, ...rest] = sampleResult.requirements;
  const result = { ...sampleResult, requirements: [{ ...first!, text: long }, ...rest] };
  const text = requirementsSection(result, { colour: false, width: 100, detail: 'full' })!;
  const table = text.split('\n').slice(1, 2 + result.requirements.length);
  expect(table[0]).toContain('limited by');
  expect(table[1]).toContain('reverberation within');
  expect(table[1]).toContain('…');
  for (const line of table) expect(displayWidth(line)).toBeLessThanOrEqual(100);
});
