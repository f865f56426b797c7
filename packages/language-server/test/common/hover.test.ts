import { describe, expect, it } from 'vitest';
import { hover } from '../../src/common/hover.js';
import type { View } from '../../src/common/view.js';
import { cursorAfter, expectHover, hoverAt, openSpecs, smallBooth, viewOf, wholeBooth } from '../helpers/index.js';

describe('hover', () => {
  it('on an assembly shows ratings, a picture and the band table', () => {
    const pieces = [/STC \d+/, 'data:image/svg+xml;base64,', /\| dB \|/];
    expectHover(cursorAfter('assembly wal'), pieces);
  });

  it('says the same where the assembly is used', () => {
    expectHover(cursorAfter('walls wal'), [/STC \d+/, /\| dB \|/]);
  });

  it('tells a picture in words where none can be shown', () => {
    const text = hoverAt(cursorAfter('assembly wal'), {}, false);
    expect(text).not.toContain('data:image');
    expect(text).toMatch(/_Transmission loss\. wall: STC \d+.*_/);
  });

  it("on a layer's name shows the material's data with its origin, and the layer", () => {
    expectHover(cursorAfter('\n  gypsum-boa'), ['density', 'catalogue', /12\.5 mm · .* kg\/m²/, 'model:']);
  });

  it("on one's own material says who stands behind the figures", () => {
    expectHover(cursorAfter('fill bat'), ['wool batt', 'resistivity', 'invented test data']);
  });

  it('on a requirement shows the verdict, the figure and its range', () => {
    expectHover(cursorAfter('require room-to'), [/missed by/, /predicted/, /dBA/]);
    expectHover(cursorAfter('require stc of wall >= 2'), [/met with/]);
  });

  it('on a noise shows it outside and inside', () => {
    expectHover(cursorAfter('noise stree'), ['Outside', 'Inside', 'data:image/svg+xml']);
  });

  it('on a noise that is not predicted says so and why', () => {
    expectHover(cursorAfter('impact step'), ['not predicted']);
  });

  it('on an opening shows its share', () => {
    expectHover(cursorAfter('door entr'), ['of what comes through', 'street', /\d+ %/]);
    expectHover(cursorAfter('vent intak'), ['of what comes through']);
  });

  it("on a block's header names what is assumed in it and on what that rests", () => {
    expectHover(cursorAfter('door entr'), [/[Nn]ot given/, /threshold/]);
  });

  it('on a booth shows what it comes to', () => {
    expectHover(cursorAfter('booth stud'), ['All surfaces and openings together', 'dBA', 'kg']);
  });

  it('on a word explains it, with an example', () => {
    expectHover(cursorAfter('  impac'), ['**impact**', '```booth']);
    expectHover(cursorAfter('\nsessio'), ['**session**']);
    expectHover(cursorAfter('    gap perimet'), ['**gap perimeter**']);
  });

  it('on a value says how it is understood and where it came from', () => {
    expectHover(cursorAfter('air ga'), ['60 mm']);
    expectHover(cursorAfter('    gap perimeter 0.'), ['0.3 mm', 'given here']);
  });

  it('on a variant sets what changes beside the base', () => {
    expectHover(cursorAfter('variant wid'), ['without `wide`', /\| .* \| .* \| .* \|/]);
  });

  it('says nothing in a comment, on a blank line and in an empty text', () => {
    expect(hoverAt('# a rema<|>rk\nuse catalog\n')).toBe('');
    expect(hoverAt('use catalog\n<|>\nlet a = 1 m\n')).toBe('');
    expect(hoverAt('<|>')).toBe('');
  });

  const onWall = (view: View): string => {
    const place = view.lines.positionAt(view.text.indexOf('assembly wall') + 11);
    return JSON.stringify(hover(view, place, { pictures: true })?.contents ?? '');
  };

  it('marks figures of an earlier text while the text is broken', () => {
    const specs = openSpecs({ 'a.booth': smallBooth });
    specs.assess('a.booth');
    specs.change('a.booth', smallBooth.replace('gypsum-board 12.5 mm', 'gypsum-board 12.5 kPa'));
    expect(onWall(specs.view('a.booth'))).toContain('before the text was broken');
    expect(onWall(specs.view('a.booth'))).toMatch(/STC \d+/);
  });

  it('says when figures are still being worked out', () => {
    const specs = openSpecs({ 'a.booth': smallBooth });
    expect(onWall(specs.view('a.booth'))).toContain('Being worked out');
    specs.assess('a.booth');
    expect(onWall(specs.view('a.booth'))).not.toContain('worked out');
    specs.change('a.booth', smallBooth.replace('gypsum-board 12.5 mm', 'gypsum-board 15 mm'));
    expect(onWall(specs.view('a.booth'))).toContain('before the last change');
  });

  it('on a unit, a choice and a title says what it is and what the line means', () => {
    expectHover('let gap = 60 m<|>m\n', ['**mm** millimetre', '**let**']);
    expectHover('material m {\n  kind por<|>ous\n}\n', ['One of `panel`', '**kind**']);
    expectHover('assembly a "outer <|>wall" {\n  air 50 mm\n}\n', ['outer wall', '**assembly**']);
  });

  it('answers on every word of a whole booth, and on no brace and in no comment', () => {
    const view = viewOf(wholeBooth);
    const seen = new Set<string>();
    const silent: string[] = [];
    for (const { kind, text, from } of view.parsed.tokens) {
      if (kind === 'newline' || kind === 'symbol') continue;
      const position = view.lines.positionAt(from);
      const line = view.text.split('\n')[position.line]!.trim();
      const key = `${line.split(' ')[0]} ${text}`;
      if (seen.has(key)) continue;
      seen.add(key);
      if (hover(view, position, { pictures: false }) === undefined) silent.push(`${text} in \`${line}\``);
    }
    expect(silent).toEqual([]);
    expect(hoverAt('assembly a <|>{ air 5 mm }\n')).toBe('');
    expect(hoverAt('let a = 1 mm # wh<|>y\n')).toBe('');
  });
});
