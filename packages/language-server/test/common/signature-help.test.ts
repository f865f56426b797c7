import { vocabulary } from '@boothwright/language';
import { describe, expect, it } from 'vitest';
import { parametersOf } from '../../src/common/signature/parameters.js';
import { valueHelp } from '../../src/common/signature/value-help.js';
import { signatureHelp } from '../../src/common/signature-help.js';
import { markedText, viewOf } from '../helpers/index.js';

/** The shape of the line with the value that is next between `<` and `>`, and what is said of that value. */
function helpAt(marked: string): { shape: string; next: string } | undefined {
  const { text, cursors } = markedText(marked);
  const view = viewOf(text);
  const help = signatureHelp(view, view.lines.positionAt(cursors[0]!));
  const signature = help?.signatures[0];
  if (signature === undefined) return undefined;
  const active = signature.parameters?.[signature.activeParameter ?? 0];
  const [from, to] = (active?.label ?? [0, 0]) as [number, number];
  const { label } = signature;
  const documentation = active?.documentation;
  return {
    shape: active === undefined ? label : `${label.slice(0, from)}<${label.slice(from, to)}>${label.slice(to)}`,
    next: typeof documentation === 'object' ? documentation.value : '',
  };
}
const inAssembly = (line: string) => `use catalog\nassembly a {\n  ${line}\n}\n`;
const inSite = (line: string) => `site {\n  ${line}\n}\n`;

describe('signature help', () => {
  it('tells which value comes next and in which units', () => {
    const help = helpAt(inAssembly('air <|>'));
    expect(help?.shape).toContain('air <LENGTH>');
    expect(help?.next).toBe('A length such as `12.5 mm`, in `mm`, `m`, `in`, `ft`, `cm`, `um`, `yd`, `mil`');
  });

  it('stays with the value while it is typed, and while its unit is missing', () => {
    for (const line of ['air 5<|>0', 'air 50 <|>', 'air 50 m<|>m']) {
      expect(helpAt(inAssembly(line))?.shape).toContain('air <LENGTH>');
    }
  });

  it('goes from one length of a size to the next', () => {
    const shapes = ['room <|>', 'room 4 m x <|>', 'room 4 m x 3 m x <|>'].map((line) => helpAt(inSite(line))?.shape);
    expect(shapes[0]).toContain('room <WIDTH>');
    expect(shapes[1]).toContain('x <DEPTH> x');
    expect(shapes[2]).toContain('x <HEIGHT>');
  });

  it('takes a layer by its thickness or its mass', () => {
    const help = helpAt(inAssembly('gypsum-board <|>'));
    expect(help?.shape).toContain('<LENGTH | MASS-PER-AREA>');
    expect(help?.next).toContain('A mass per area such as `4.9 kg/m2`');
  });

  it('tells the limit of a requirement by its kind', () => {
    expect(helpAt('require room-tone <= <|>')?.next).toMatch(/^A level such as `35 dBA`, in `/);
    expect(helpAt('require co2 <= <|>')?.next).toContain('`ppm`');
  });

  it('lists what may be chosen, and tells what a reference leads to', () => {
    expect(helpAt('material m {\n  kind <|>\n}\n')?.next).toContain('`porous`');
    expect(helpAt('booth b {\n  walls <|>\n}\n')?.next).toBe('The name of an assembly');
  });

  it('leads on behind a word that may follow', () => {
    expect(helpAt(inSite('floor timber limit <|>'))?.next).toContain('`kPa`');
  });

  it('marks nothing where the line is complete', () => {
    expect(helpAt(inAssembly('air 50 mm <|>'))?.shape).not.toContain('<');
  });

  it('says nothing on the first word, in a comment, between lines and in a line that is no fact', () => {
    for (const text of [
      inAssembly('ai<|>r 50 mm'),
      inAssembly('air 50 mm # <|>'),
      inAssembly('air 50 mm\n  <|>'),
      'nonsense <|>',
      'let a = 1 mm; <|>',
      'assembly a { <|> }',
      'assembly a { } <|>',
    ]) {
      expect(helpAt(text)).toBeUndefined();
    }
  });

  it('has a word of help for every parameter of every fact, each where the shape shows it', () => {
    for (const { facts } of vocabulary) {
      for (const fact of facts) {
        let last = 0;
        for (const { from, to, part } of parametersOf(fact)) {
          expect(valueHelp(part), `${fact.keyword}: ${part.kind}`).not.toBe('');
          expect(from, fact.keyword).toBeGreaterThanOrEqual(last);
          last = to;
        }
      }
    }
  });
});
