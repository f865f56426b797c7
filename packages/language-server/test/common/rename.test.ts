import { describe, expect, it } from 'vitest';
import { prepareRename, rename } from '../../src/common/rename.js';
import { openSpecs, smallBooth, specsOf, viewOf } from '../helpers/index.js';

function placeIn(view: ReturnType<typeof viewOf>, part: string) {
  return view.lines.positionAt(view.text.indexOf(part) + part.length - 1);
}

describe('rename', () => {
  it('changes the declaration and every use', () => {
    const view = viewOf('let gap = 5 mm\nassembly a {\n  air gap\n}\n');
    const edit = rename(view, placeIn(view, 'let gap'), 'cavity');
    expect(edit?.changes?.[view.uri]?.map(({ range }) => range.start.line).sort()).toEqual([0, 2]);
    expect(edit?.changes?.[view.uri]?.every(({ newText }) => newText === 'cavity')).toBe(true);
  });

  it('changes the other file too when the name is declared there', () => {
    const specs = openSpecs({
      'a.booth': 'use "./parts.booth"\nassembly a {\n  batt 50 mm\n}\n',
      'parts.booth': 'material batt { kind porous; density 38 kg/m3; resistivity 9 kPa.s/m2 }\n',
    });
    const view = specs.view('a.booth');
    const edit = rename(view, placeIn(view, '  batt'), 'wool');
    expect(Object.keys(edit?.changes ?? {}).sort()).toEqual([specs.uri('a.booth'), specs.uri('parts.booth')]);
  });

  it('changes specs that are not open, and refuses a name that one of them has already', () => {
    const onDisk = {
      'b.booth': 'use "./parts.booth"\nassembly b {\n  batt 50 mm\n}\n',
      'c.booth': 'use "./parts.booth"\nmaterial felt { kind porous }\nassembly c {\n  batt 20 mm\n}\n',
    };
    const specs = openSpecs(
      { 'parts.booth': 'material batt { kind porous; density 38 kg/m3; resistivity 9 kPa.s/m2 }\n' },
      onDisk,
    );
    const view = specs.view('parts.booth');
    const others = specsOf(specs, onDisk);
    const edit = rename(view, placeIn(view, 'material batt'), 'wool', others);
    expect(Object.entries(edit?.changes ?? {}).map(([uri, edits]) => [uri, edits.length])).toEqual([
      [specs.uri('parts.booth'), 1],
      [specs.uri('b.booth'), 1],
      [specs.uri('c.booth'), 1],
    ]);
    expect(() => rename(view, placeIn(view, 'material batt'), 'felt', others)).toThrow(
      'There is a material called `felt` already in c.booth',
    );
  });

  it('refuses a name of the catalogue', () => {
    const view = viewOf(smallBooth);
    expect(prepareRename(view, placeIn(view, '\n  gypsum'))).toBeUndefined();
    expect(() => rename(view, placeIn(view, '\n  gypsum'), 'board')).toThrow(/catalogue/);
  });

  it('refuses what is no name, and a name that is taken', () => {
    const view = viewOf('let gap = 5 mm\nlet width = 3 mm\n');
    expect(() => rename(view, placeIn(view, 'let gap'), 'My Gap')).toThrow(/small letters/);
    expect(() => rename(view, placeIn(view, 'let gap'), 'width')).toThrow(/already/);
  });

  it('has nothing to rename on a word of the language', () => {
    const view = viewOf(smallBooth);
    expect(prepareRename(view, placeIn(view, 'session'))).toBeUndefined();
  });
});
