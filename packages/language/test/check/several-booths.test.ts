import { describe, expect, it } from 'vitest';
import { checkText, problemIds, underlined } from '../check-text.js';

const booths = `use catalog
assembly wall { gypsum-board 12.5 mm; air 50 mm; gypsum-board 12.5 mm }
site "room" { room 5 m x 4 m x 2.5 m; noise tram 60 dBA like road-traffic }
booth voice { inside 1.2 m x 1.2 m x 2 m; walls wall; roof wall; floor wall; door entry on front { size 700 mm x 1900 mm; leaf wall } }
booth edit { inside 1.5 m x 1.5 m x 2 m; walls wall; roof wall; floor wall; door entry on front { size 700 mm x 1900 mm; leaf wall } }
session { people 1; length 60 min }
`;

describe('several booths in a file', () => {
  it('are all read, and their openings may share names', () => {
    const { spec, problems } = checkText(booths);
    expect(problems).toEqual([]);
    expect(spec.booths.map(({ name, doors }) => [name, doors[0]?.name])).toEqual([
      ['voice', 'entry'],
      ['edit', 'entry'],
    ]);
  });

  it('have requirements of their own and shared ones', () => {
    const { spec, problems } = checkText(
      `${booths}require co2 <= 1000 ppm for voice\nrequire isolation >= 30 dB against tram for edit\nrequire mass <= 900 kg\n`,
    );
    expect(problems).toEqual([]);
    expect(spec.requirements.map(({ kind, booth }) => [kind, booth])).toEqual([
      ['co2', 'voice'],
      ['isolation', 'edit'],
      ['mass', undefined],
    ]);
  });

  it('a requirement of a booth that is not there is told, and is none of every booth', () => {
    const result = checkText(`${booths}require co2 <= 1000 ppm for voise\n`);
    expect(result.problems.map(({ id, hint }) => [id, hint])).toEqual([['unknown-name', 'did you mean `voice`?']]);
    expect(underlined(result)).toBe('voise');
    expect(result.spec.requirements).toEqual([]);
  });

  it('the name in a requirement is a reference, so that it is renamed with its booth', () => {
    const { symbols } = checkText(`${booths}require co2 <= 1000 ppm for voice\n`);
    expect(symbols.symbols.find(({ name }) => name === 'voice')?.references).toHaveLength(1);
  });

  it('a variant changes one of them', () => {
    const { spec, problems } = checkText(`${booths}variant tall { edit.inside.height = 2.2 m }\n`);
    expect(problems).toEqual([]);
    expect(spec.variants[0]!.spec.booths.map(({ inside }) => inside.height.value)).toEqual([2, 2.2]);
  });

  it('two of one name are one too many', () => {
    expect(problemIds(`${booths}booth edit { inside 1 m x 1 m x 2 m; walls wall; roof wall; floor wall }\n`)).toContain(
      'name-twice',
    );
  });
});
