import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { cautionIds, findingIds } from '../../src/allowed/known-ids.js';
import { createAssessor } from '../../src/index.js';
import { specOf } from '../fixtures/from-text.js';

const { assess } = createAssessor();

/** A closed box with a door that opens inward; the comment stands behind a line of it. */
const box = (onHeader = '', onDoor = ''): string => `use catalog
assembly wall { gypsum-board 12.5 mm; air 50 mm; gypsum-board 12.5 mm }
site "room" { room 5 m x 4 m x 2.5 m; noise tram 60 dBA like road-traffic }
booth box { ${onHeader}
  inside 1.2 m x 1.2 m x 2 m
  walls wall; roof wall; floor wall
  door entry on front { ${onDoor}
    size 700 mm x 1900 mm
    leaf wall
    swing inward
  }
}
session { people 1; length 60 min }
variant tall { box.inside.height = 2.1 m }
`;
const plain = assess(specOf(box()));
const ids = (list: readonly { id: string }[]) => list.map(({ id }) => id);

describe('a comment that allows a finding or a caution', () => {
  it('takes it out of what is told, in the variants too, and lists it with its reason', () => {
    expect(ids(plain.cautions)).toContain('off-gassing');
    const { hazard } = plain.cautions.find(({ id }) => id === 'off-gassing')!;
    const result = assess(specOf(box('# allow off-gassing: every panel is a year old')));
    expect(ids(result.cautions)).toEqual(ids(plain.cautions).filter((id) => id !== 'off-gassing'));
    expect(ids(result.variants.tall!.cautions)).not.toContain('off-gassing');
    expect(result.allowances).toMatchObject([
      { id: 'off-gassing', kind: 'caution', state: 'allowed', reason: 'every panel is a year old', note: '' },
    ]);
    expect(result.allowances[0]!.told).toEqual([expect.stringContaining(hazard)]);
  });

  it('changes no number and no verdict', () => {
    const result = assess(specOf(box('# allow off-gassing: every panel is a year old')));
    expect(result.booths.box!.noise).toEqual(plain.booths.box!.noise);
    expect(result.requirements).toEqual(plain.requirements);
  });

  it('cannot allow what can kill', () => {
    expect(ids(plain.cautions)).toContain('no-fan');
    const result = assess(specOf(box('# allow no-fan: I hold my breath')));
    expect(ids(result.cautions)).toEqual(ids(plain.cautions));
    expect(result.allowances).toMatchObject([{ id: 'no-fan', state: 'refused', told: [] }]);
  });

  it('is told where it has no effect', () => {
    const elsewhere = assess(specOf(box('', '# allow off-gassing: wrong line')));
    expect(elsewhere.allowances).toMatchObject([{ state: 'unused' }]);
    expect(ids(elsewhere.cautions)).toContain('off-gassing');
    const misspelt = assess(specOf(box('# allow off-gasing: misspelt')));
    expect(misspelt.allowances).toMatchObject([{ kind: null, state: 'unknown' }]);
    expect(misspelt.allowances[0]!.note).toContain('did you mean `off-gassing`?');
  });
});

describe('the names that comments can allow', () => {
  const sources = (folder: string) =>
    readdirSync(join(import.meta.dirname, '../../src', folder))
      .map((file) => readFileSync(join(import.meta.dirname, '../../src', folder, file), 'utf8'))
      .join('\n');

  it('are those of every finding and every caution', () => {
    const findings = [...sources('findings').matchAll(/\bid: '([a-z-]+)'/g)].map((match) => match[1]!);
    const text = sources('cautions');
    const cautions = [
      ...[...text.matchAll(/\b(?:caution|note)\(\s*'([a-z-]+)'/g)].map((match) => match[1]!),
      ...[...text.matchAll(/\? '(door-[a-z-]+)' : '(door-[a-z-]+)'/g)].flatMap((match) => match.slice(1)),
    ];
    expect([...findingIds].toSorted()).toEqual([...new Set(findings)].toSorted());
    expect([...cautionIds].toSorted()).toEqual([...new Set(cautions)].toSorted());
  });
});
