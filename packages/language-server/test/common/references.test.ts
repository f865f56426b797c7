import { describe, expect, it } from 'vitest';
import { references } from '../../src/common/references.js';
import { expectReferences, openSpecs, specsOf } from '../helpers/index.js';

describe('references', () => {
  it('finds the declaration and every use', () => {
    expectReferences(
      'let <|g<|>ap|> = 5 mm\nassembly a {\n  air <|gap|>\n  air <|gap|> + 2 mm\n}\nvariant v { <|gap|> = 7 mm }\n',
    );
  });

  it('tells a name in a comment or a string from a use', () => {
    expectReferences('let <|g<|>ap|> = 5 mm # gap\nassembly a "gap" {\n  air <|gap|>\n}\n');
  });
});

describe('references across files', () => {
  const parts = 'material batt { kind porous; density 38 kg/m3; resistivity 9 kPa.s/m2 }\n';
  const uses = (path: string) => `use "${path}"\nassembly a {\n  batt 50 mm\n}\n`;

  /** The files in which the name at the first place of a text stands, with the lines. */
  function found(open: Record<string, string>, onDisk: Record<string, string>, path: string, part: string): string[] {
    const specs = openSpecs(open, onDisk);
    const view = specs.view(path);
    const position = view.lines.positionAt(view.text.indexOf(part));
    return references(view, position, true, specsOf(specs, onDisk))
      .map(({ uri, range }) => `${uri.replace('file:///booths/', '')}:${range.start.line}`)
      .sort();
  }

  it('are found in specs that are not open, from the declaration', () => {
    const onDisk = { 'one.booth': uses('./parts.booth'), 'deep/two.booth': uses('../parts.booth') };
    expect(found({ 'parts.booth': parts }, onDisk, 'parts.booth', 'batt')).toEqual([
      'deep/two.booth:2',
      'one.booth:2',
      'parts.booth:0',
    ]);
  });

  it('are found from a use, each once, though several specs tell of the same place', () => {
    const onDisk = {
      'parts.booth': parts,
      'shared.booth': uses('./parts.booth'),
      'two.booth': 'use "./shared.booth"\nuse "./parts.booth"\nassembly b {\n  batt 20 mm\n}\n',
    };
    expect(found({ 'one.booth': uses('./parts.booth') }, onDisk, 'one.booth', 'batt')).toEqual([
      'one.booth:2',
      'parts.booth:0',
      'shared.booth:2',
      'two.booth:3',
    ]);
  });

  it('do not hold a name of the same spelling that is declared elsewhere', () => {
    const onDisk = { 'other.booth': `${parts}assembly a {\n  batt 50 mm\n}\n` };
    expect(found({ 'parts.booth': parts }, onDisk, 'parts.booth', 'batt')).toEqual(['parts.booth:0']);
  });

  it('hold every use of a material of the catalogue', () => {
    const onDisk = { 'two.booth': 'use catalog\nassembly b {\n  gypsum-board 15 mm\n}\n' };
    const open = { 'one.booth': 'use catalog\nassembly a {\n  gypsum-board 12.5 mm\n}\n' };
    const places = found(open, onDisk, 'one.booth', 'gypsum-board');
    expect(places).toEqual(expect.arrayContaining(['one.booth:2', 'two.booth:2']));
    expect(places.filter((place) => place.startsWith('booth-catalog:'))).toHaveLength(1);
  });
});
