import { describe, expect, it } from 'vitest';
import { actionsAt, problemsOf } from '../../helpers/code-actions.js';

const only = ['quickfix'];
const titles = (marked: string) =>
  actionsAt(marked, only).map(({ title, preferred }) => `${preferred ? '* ' : ''}${title}`);
/** The text once the preferred fix is applied; there must be one. */
function mended(marked: string): string {
  const preferred = actionsAt(marked, only).filter((action) => action.preferred);
  expect(preferred).toHaveLength(1);
  return preferred[0]!.after;
}
const wall = (line: string) => `use catalog\nassembly wall {\n  ${line}\n}\n`;
const site = (line: string) => `site {\n  room 4 m x 3.5 m x 2.45 m\n  ${line}\n}\n`;

describe('quick fixes of units', () => {
  it('asks which level is meant where both fit', () => {
    const marked = site('noise street 45 d<|>b like road-traffic');
    expect(titles(marked)).toEqual(['Replace `db` by `dBA`', 'Replace `db` by `dB`']);
    for (const { after } of actionsAt(marked, only)) expect(problemsOf(after)).toEqual([]);
  });

  it('gives a bare number the units in which it is usual, and prefers none of several', () => {
    expect(titles(wall('gypsum-board 12<|>'))).toContain('Replace `12` by `12 mm`');
    expect(titles(wall('gypsum-board 12<|>')).some((title) => title.includes('12 m`'))).toBe(false);
    expect(mended(wall('frame 45 mm x 70<|> every 600 mm'))).toBe(wall('frame 45 mm x 70 mm every 600 mm'));
  });

  it('reads a share of less than one as a share of the whole', () => {
    expect(mended(`site { room 4 m x 3 m x 2 m; humidity 0.<|>5 }\n`)).toContain('humidity 50 %');
  });

  it('puts in the unit that a spelt-out one stands for, and the weighting that is asked for', () => {
    expect(mended(wall('osb 12 milli<|>metres'))).toBe(wall('osb 12 mm'));
    expect(mended(site('noise street 45 dB(<|>A) like road-traffic'))).toContain('45 dBA like');
  });

  it('turns metres written for millimetres back', () => {
    expect(mended(wall('gypsum-board 12.5<|> m'))).toBe(wall('gypsum-board 12.5 mm'));
  });
});

describe('quick fixes of words, names and signs', () => {
  it.each([
    ['a keyword', 'asse<|>mbli wall {\n  air 50 mm\n}\n', 'assembly wall {\n  air 50 mm\n}\n'],
    ['a name', `${wall('gyps<|>m-board 12.5 mm')}`, wall('gypsum-board 12.5 mm')],
    ['a trade name', wall('plaster<|>board 12.5 mm'), wall('gypsum-board 12.5 mm')],
    ['a decimal comma', wall('osb 12<|>,5 mm'), wall('osb 12.5 mm')],
    ['an inch sign', wall('osb 1/2<|>"'), wall('osb 1/2 in')],
    [
      'a value without let',
      'ga<|>p = 60 mm\nassembly a {\n  air gap\n}\n',
      'let gap = 60 mm\nassembly a {\n  air gap\n}\n',
    ],
    [
      'a sign of the wrong sense',
      `${wall('osb 12 mm')}require stc of wall <<|>= 20\n`,
      `${wall('osb 12 mm')}require stc of wall >= 20\n`,
    ],
  ])('%s', (_, marked, after) => {
    expect(mended(marked)).toBe(after);
    expect(problemsOf(after)).toEqual([]);
  });

  it('offers no name that is not near, but a place to declare it', () => {
    expect(titles('use catalog\nassembly wall {\n  air zz<|>zz\n}\n')).toEqual([
      'Declare `let zzzz =`, to be filled in',
    ]);
  });
});

describe('quick fixes of blocks', () => {
  it.each([
    ['a brace that is missing at the end', 'assem<|>bly wall {\n  air 50 mm\n', 'assembly wall {\n  air 50 mm\n}\n'],
    [
      'one that is missing before another block',
      'assem<|>bly a {\n  air 50 mm\n\nassembly b {\n  air 60 mm\n}\n',
      'assembly a {\n  air 50 mm\n}\n\nassembly b {\n  air 60 mm\n}\n',
    ],
    ['one too many', 'assembly a {\n  air 50 mm\n}\n<|>}\n', 'assembly a {\n  air 50 mm\n}\n'],
    ['one on the next line', 'assembly a\n<|>{\n  air 50 mm\n}\n', 'assembly a {\n  air 50 mm\n}\n'],
    [
      'none at all',
      'assembly a<|>\n  air 50 mm\n\nassembly b {\n  air 60 mm\n}\n',
      'assembly a {\n  air 50 mm\n}\n\nassembly b {\n  air 60 mm\n}\n',
    ],
    ['a text that is not closed', 'assembly a "<|>wall {\n  air 50 mm\n}\n', 'assembly a "wall" {\n  air 50 mm\n}\n'],
  ])('%s', (_, marked, after) => {
    expect(mended(marked)).toBe(after);
  });
});

describe('quick fixes of what is missing', () => {
  it('adds the catalogue', () => {
    expect(mended('assembly a {\n  gyps<|>um-board 12.5 mm\n}\n')).toBe(
      'use catalog\nassembly a {\n  gypsum-board 12.5 mm\n}\n',
    );
  });

  const booth = (lines: string) =>
    `use catalog\nassembly wall {\n  osb 18 mm\n}\nassembly deck {\n  osb 22 mm\n}\nbooth box {\n  inside 1 m x 1 m x 2 m\n${lines}}\n`;

  it('offers every assembly for a face and prefers none', () => {
    const offered = actionsAt(booth('  walls wall\n  roof wall\n').replace('booth box', 'booth bo<|>x'), only);
    expect(offered.map(({ title }) => title)).toEqual(['Add `floor wall`', 'Add `floor deck`']);
    expect(offered.some(({ preferred }) => preferred)).toBe(false);
    expect(offered[1]!.after).toContain('  roof wall\n  floor deck\n}\n');
    for (const { after } of offered) expect(problemsOf(after)).toEqual([]);
  });

  it('invents no value: the line is there and asks for it', () => {
    const text = booth('  walls wall\n  roof wall\n  floor deck\n  door entry on front {\n    leaf wall\n  }\n');
    const [action] = actionsAt(text.replace('door entry', 'door ent<|>ry'), only);
    expect(action?.title).toBe('Add `size`, its value to be filled in');
    expect(action?.after).toContain('    leaf wall\n    size  # WIDTH x HEIGHT\n  }\n');
    expect(problemsOf(action!.after)).not.toEqual([]);
  });

  it('offers the kinds of a material, each a way of its own', () => {
    expect(titles('material f<|>oo {\n  density 40 kg/m3\n}\n')).toContain('Add `kind porous`');
  });

  it('asks where the figures of a material are from', () => {
    const marked = 'material f<|>oo {\n  kind porous\n  density 40 kg/m3\n  resistivity 9 kPa.s/m2\n}\n';
    expect(titles(marked)).toContain('Add `source` to `foo`, to be filled in');
    expect(titles(marked.replace('  density', '  source "test"\n  density'))).toEqual([]);
  });
});

describe('quick fixes of lines too many', () => {
  it('offers to remove either of two that differ, and the second of two that are the same', () => {
    const session = (a: string, b: string) => `session {\n  people ${a}\n  people<|> ${b}\n}\n`;
    expect(titles(session('1', '2'))).toEqual(['Remove the second `people 2`', 'Remove the first `people 1`']);
    expect(mended(session('1', '1'))).toBe('session {\n  people 1\n}\n');
  });

  it('removes what nothing uses', () => {
    const text =
      'use catalog\nlet sp<|>are = 3 mm\nassembly wall {\n  osb 18 mm\n}\nbooth box {\n  inside 1 m x 1 m x 2 m\n  walls wall\n  roof wall\n  floor wall\n}\n';
    const [action] = actionsAt(text, only);
    expect(action?.title).toBe('Remove `spare`, which nothing uses');
    expect(action?.after).toContain('use catalog\nassembly wall');
  });

  it('has nothing to offer for a sound line', () => {
    expect(titles(wall('osb<|> 12 mm'))).toEqual([]);
  });
});

it('every fix names the problem it mends and carries its data', () => {
  const [{ action }] = actionsAt(wall('gyps<|>m-board 12.5 mm'), only) as [ReturnType<typeof actionsAt>[number]];
  expect(action.diagnostics?.map(({ code, data }) => ({ code, data }))).toEqual([
    { code: 'unknown-name', data: { instead: ['gypsum-board'] } },
  ]);
});
