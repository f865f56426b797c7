import type { BoothResult, ResultDocument } from '@boothwright/assessment';
import { describe, expect, test } from 'vitest';
import { renderPartsText } from '../../src/parts/render-parts-text.js';
import { displayWidth } from '../../src/text/display-width.js';
import { sampleResult } from '../fixtures/sample-result.js';

const style = { colour: false, width: 100, detail: 'short' } as const;
const text = renderPartsText(sampleResult, style);

function withBuild(changes: Partial<BoothResult['build']>): ResultDocument {
  const [name, booth] = Object.entries(sampleResult.booths)[0] as [string, BoothResult];
  return { ...sampleResult, booths: { [name]: { ...booth, build: { ...booth.build, ...changes } } } };
}

describe('renderPartsText(result, style)', () => {
  test('has every list of the workshop, in this order', () => {
    const headings = ['Panels', 'What to buy', 'Cut list', 'Sheets', 'Lengths', 'Seams to seal', 'Loads on the floor'];
    const places = headings.map((heading) => text.search(new RegExp(`^${heading}`, 'm')));
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(places[0]).toBe(0);
  });

  test('says where every piece lies on its sheet, and what fits on none', () => {
    expect(text).toContain('1a 446×2042 at 0,0');
    expect(text).toMatch(/9a, panel 9, roof 1, 1300 × 2500 mm is bigger than any sheet/);
  });

  test('says which size was assumed', () => {
    expect(text).toContain('a length assumed because the material gives none');
    expect(text).not.toContain('a size assumed');
  });

  test('names what has no price, what is too few and that loads are no check', () => {
    expect(text).toContain('Without a price, in no sum: softwood 45 x 70 mm');
    expect(text).toContain('plywood-12: too few, 6 in the budget, 7 needed');
    expect(text).toContain('not a check of the floor');
  });

  test('says why there are no panels and what to write', () => {
    const none = renderPartsText(
      withBuild({ panels: [], parts: [], sheetLayouts: [], lengthLayouts: [], panelsWhy: 'the text does not say how' }),
      style,
    );
    expect(none).toContain('None: the text does not say how.');
    expect(none).toContain('panels { width 600 mm }');
  });

  test('keeps its prose within the width', () => {
    for (const line of renderPartsText(sampleResult, { ...style, width: 80 }).split('\n')) {
      if (/^ {2}\S/.test(line) && !/ {2}\S.* {2}\S/.test(line)) expect(displayWidth(line)).toBeLessThanOrEqual(80);
    }
  });

  test('says so when no booth could be worked out', () => {
    expect(renderPartsText({ ...sampleResult, booths: {} }, style)).toContain('no booth');
  });
});
