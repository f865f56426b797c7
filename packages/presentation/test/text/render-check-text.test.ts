import { describe, expect, test } from 'vitest';
import { displayWidth } from '../../src/text/display-width.js';
import { renderCheckText } from '../../src/text/render-check-text.js';
import { sampleResult } from '../fixtures/sample-result.js';

describe('renderCheckText(result, problems, style)', () => {
  test('prints the verdict first and every section behind it, at 100 columns', async () => {
    const text = renderCheckText(sampleResult, [], { colour: false, width: 100, detail: 'full' });
    await expect(text).toMatchFileSnapshot('__snapshots__/check-100-columns.txt');
  });

  test('prints the same at 72 columns', async () => {
    const text = renderCheckText(sampleResult, [], { colour: false, width: 72, detail: 'full' });
    await expect(text).toMatchFileSnapshot('__snapshots__/check-72-columns.txt');
  });

  test('keeps every line within the width, tables of seven octaves included', () => {
    for (const width of [80, 100, 120]) {
      const lines = renderCheckText(sampleResult, [], { colour: false, width, detail: 'full' }).split('\n');
      expect(lines.filter((line) => displayWidth(line) > width)).toEqual([]);
    }
  });

  test('writes the same text with colours as without, apart from the colours', () => {
    const plain = renderCheckText(sampleResult, [], { colour: false, width: 100, detail: 'full' });
    const coloured = renderCheckText(sampleResult, [], { colour: true, width: 100, detail: 'full' });
    expect(coloured).toContain('\u001b[31m');
    // biome-ignore lint/suspicious/noControlCharactersInRegex: the escape character is what is looked for
    expect(coloured.replace(/\u001b\[\d+m/g, '')).toBe(plain);
    expect(plain).not.toContain('\u001b');
  });

  test('never calls anything safe, compliant or approved', () => {
    expect(renderCheckText(sampleResult, [], { colour: false, width: 100, detail: 'full' })).not.toMatch(
      /\b(safe|compliant|approved)\b/i,
    );
  });
});
