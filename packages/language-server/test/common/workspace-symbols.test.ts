import { describe, expect, it } from 'vitest';
import { workspaceSymbols } from '../../src/common/workspace-symbols.js';
import { smallBooth } from '../helpers/index.js';

const files = [
  { uri: 'file:///booths/study.booth', text: smallBooth },
  {
    uri: 'file:///booths/parts.booth',
    text: 'material felt "wool felt" { kind porous }\nlet =\nassembly door-leaf {\n',
  },
];
const names = (query: string): string[] => workspaceSymbols(files, query).map(({ name }) => name);

describe('workspace symbols', () => {
  it('are all declared names for an empty query, also those of a broken text', () => {
    expect(names('')).toEqual(
      expect.arrayContaining([
        'gap',
        'batt',
        'wall',
        'street',
        'study',
        'entry',
        'intake',
        'wide',
        'felt',
        'door-leaf',
      ]),
    );
  });

  it('are narrowed by letters of the name or the title, in order', () => {
    expect(names('entr')).toEqual(['entry']);
    expect(names('dl')).toEqual(['door-leaf']);
    expect(names('Wool')).toEqual(['batt', 'felt']);
    expect(names('zz')).toEqual([]);
  });

  it('say where they stand and in what', () => {
    const [entry] = workspaceSymbols(files, 'entry');
    const line = smallBooth.split('\n').findIndex((each) => each.includes('door entry'));
    expect(entry).toMatchObject({
      containerName: 'study',
      location: { uri: 'file:///booths/study.booth', range: { start: { line, character: 2 } } },
    });
  });
});
