import { describe, expect, it } from 'vitest';
import { codeLenses } from '../../src/common/code-lenses.js';
import { defaultSettings } from '../../src/common/settings.js';
import type { View } from '../../src/common/view.js';
import { openSpecs, smallBooth, viewOf } from '../helpers/index.js';

const lensesOf = (view: View, codeLens = defaultSettings.codeLens) =>
  codeLenses(view, { ...defaultSettings, codeLens }).map(({ range, command }) => ({
    line: view.text.split('\n')[range.start.line],
    title: command?.title ?? '',
  }));

describe('code lenses', () => {
  it('stand above each booth and each variant, with the verdict in words', () => {
    const found = lensesOf(viewOf(smallBooth));
    expect(found.map(({ line }) => line)).toEqual(['booth study {', 'variant wide { gap = 120 mm }']);
    expect(found[0]?.title).toMatch(/^[✓✗?] .*requirements? (?:met|missed|not assessed).* dBA .*inside/);
    expect(found[1]?.title).toMatch(/^[✓✗?] .*requirements?/);
  });

  it('can be switched off, each kind by itself', () => {
    const view = viewOf(smallBooth);
    expect(lensesOf(view, { booths: false, variants: true, sinceCommit: true }).map(({ line }) => line)).toEqual([
      'variant wide { gap = 120 mm }',
    ]);
    expect(lensesOf(view, { booths: true, variants: false, sinceCommit: true }).map(({ line }) => line)).toEqual([
      'booth study {',
    ]);
  });

  it('open the live sheet at their line where there is one, and are mere words elsewhere', () => {
    const view = viewOf(smallBooth);
    const [booth] = codeLenses(view, defaultSettings, true);
    expect(booth?.command).toMatchObject({
      command: 'boothwright.openSheet',
      arguments: [view.uri, booth?.range.start],
    });
    expect(codeLenses(view, defaultSettings)[0]?.command?.command).toBe('');
  });

  it('are marked while the text is broken, and none are there before the first numbers', () => {
    const specs = openSpecs({ 'a.booth': smallBooth });
    expect(lensesOf(specs.view('a.booth'))).toEqual([]);
    specs.assess('a.booth');
    specs.change('a.booth', `${smallBooth}let =\n`);
    expect(lensesOf(specs.view('a.booth'))[0]?.title).toMatch(/^was /);
  });
});
