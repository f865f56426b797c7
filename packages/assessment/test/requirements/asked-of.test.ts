import { checkSpec } from '@boothwright/language';
import { describe, expect, it } from 'vitest';
import { createAssessor } from '../../src/index.js';
import { specOf } from '../fixtures/from-text.js';

const { assess } = createAssessor();

const booths = `use catalog
assembly wall { gypsum-board 12.5 mm; air 50 mm; gypsum-board 12.5 mm }
site "room" { room 5 m x 4 m x 2.5 m; noise tram 60 dBA like road-traffic }
booth voice { inside 1.2 m x 1.2 m x 2 m; walls wall; roof wall; floor wall }
booth edit { inside 1.5 m x 1.5 m x 2 m; walls wall; roof wall; floor wall }
session { people 1; length 60 min }
`;

describe('a requirement', () => {
  it('is asked of every booth, and with `for` of one alone', () => {
    const { requirements } = assess(specOf(`${booths}require mass <= 900 kg\nrequire height <= 2.3 m for edit\n`));
    expect(requirements.map(({ kind, booth }) => [kind, booth])).toEqual([
      ['mass', 'voice'],
      ['mass', 'edit'],
      ['height', 'edit'],
    ]);
  });

  it('asked of a booth that could not be read stays open', () => {
    const broken = booths.replace('inside 1.5 m x 1.5 m x 2 m', 'inside 1.5 kg');
    const text = `${broken}require height <= 2.3 m for edit\n`;
    const { spec } = checkSpec('test.booth', { read: () => ({ kind: 'text', text }) });
    const { requirements } = assess(spec);
    expect(requirements).toMatchObject([{ kind: 'height', booth: 'edit', verdict: 'not-assessed' }]);
  });
});
