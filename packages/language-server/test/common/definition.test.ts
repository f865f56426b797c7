import { catalogueText } from '@boothwright/language';
import { describe, it } from 'vitest';
import { cursorAfter, expectDefinition } from '../helpers/index.js';

describe('definition', () => {
  it('leads from a use to the declaration', () => {
    expectDefinition(
      'use catalog\nassembly <|wall|> {\n  gypsum-board 12 mm\n}\nbooth b {\n  inside 1 m x 1 m x 2 m\n  walls wa<|>ll\n}\n',
    );
    expectDefinition('let <|gap|> = 5 mm\nassembly a {\n  air ga<|>p\n}\n');
  });

  it('leads from the declaration to itself', () => {
    expectDefinition('let <|g<|>ap|> = 5 mm\n');
  });

  it('leads into another file of the folder', () => {
    expectDefinition(
      'use "./parts.booth"\nassembly a {\n  ba<|>tt 50 mm\n}\n',
      { uri: 'file:///booths/parts.booth', line: 1 },
      { 'parts.booth': '# own\nmaterial batt { kind porous; density 38 kg/m3; resistivity 9 kPa.s/m2 }\n' },
    );
  });

  it('leads into the catalogue', () => {
    const line = catalogueText.split('\n').findIndex((each) => /^material gypsum-board\b/.test(each));
    expectDefinition(cursorAfter('\n  gypsum-boa'), { uri: 'booth-catalog:/catalog.booth', line });
  });

  it('leads nowhere from a word or an unknown name', () => {
    expectDefinition('us<|>e catalog\n');
    expectDefinition('assembly a {\n  unheard-o<|>f 5 mm\n}\n');
  });
});
