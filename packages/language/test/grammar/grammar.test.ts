import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Part, parse, vocabulary } from '@boothwright/language';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { namesIn, PROSE, readEbnf } from './ebnf.js';
import { samplesOf } from './samples.js';

const page = readFileSync(join(import.meta.dirname, '../../../../docs/language-grammar.md'), 'utf8');
const rules = readEbnf(/^```ebnf\n([\s\S]*?)^```$/m.exec(page)![1]!);

/** Lines in which a text of each rule may stand. */
const HOSTS: Readonly<Record<string, (text: string) => string>> = {
  value: (text) => `let a = ${text}`,
  path: (text) => `variant v {\n${text} = 3 mm\n}`,
  override: (text) => `variant v {\n${text}\n}`,
  name: (text) => `assembly ${text} { }`,
  text: (text) => `assembly a ${text} { }`,
  clause: (text) => `material m {\ndensity 5 kg/m3 ${text}\n}`,
  size: (text) => (text.split(/ [x×] /).length === 2 ? `site {\ndoorway ${text}\n}` : `site {\nroom ${text}\n}`),
  position: (text) =>
    text.split(' , ').length === 2 ? `booth b {\nstands at ${text}\n}` : `booth b {\nmouth at ${text}\n}`,
  bands: (text) => `material m {\nabsorption ${text}\n}`,
  pairs: (text) => `booth b {\nvent v on left {\nfan 10 L/s {\ncurve ${text}\n}\n}\n}`,
  hours: (text) => `site {\nimpact i {\nhours ${text}\n}\n}`,
  clock: (text) => `session {\nstarts ${text}\n}`,
  face: (text) => `booth b {\nlining on ${text} { }\n}`,
  faces: (text) => `booth b {\nlining on ${text} { }\n}`,
  nominal: (text) => `assembly a {\nframe ${text} every 400 mm\n}`,
  price: (text) => `material m {\nprice ${text}\n}`,
  item: (text) => `budget {\nitem a ${text.replace(/ per .*/, '')}\n}`,
  fixings: (text) => `assembly a {\nchannels ${text}\nclips ${text}\n}`,
  take: (text) => `session {\ntake ${text}\n}`,
  comment: (text) => `let a = 3 mm ${text}`,
};

/** Which rule of the page says how a part of a line is written; `keyword` where the tables of the reference do. */
const RULE_OF: Readonly<Record<Part['kind'], string>> = {
  quantity: 'value',
  amount: 'value',
  'any-value': 'value',
  size: 'size',
  position: 'position',
  choice: 'keyword',
  reference: 'name',
  'new-name': 'name',
  title: 'text',
  text: 'text',
  literal: 'keyword',
  optional: 'keyword',
  either: 'keyword',
  face: 'face',
  faces: 'faces',
  bands: 'bands',
  pairs: 'pairs',
  clock: 'clock',
  hours: 'hours',
  price: 'price',
  nominal: 'nominal',
  path: 'path',
  tokens: 'override',
};

/** What the page leaves to the tables of the reference or to common sense. */
const GIVEN = new Set(['keyword', 'part', 'newline', 'word', 'letter', 'digit', 'digits', ...PROSE]);

describe('the grammar page', () => {
  it('defines every rule that it uses', () => {
    const used = new Set([...rules.values()].flatMap(namesIn));
    expect([...used].filter((name) => !rules.has(name) && !GIVEN.has(name))).toEqual([]);
  });

  it('has a rule for every sort of part of a line', () => {
    const kinds = new Set<Part['kind']>();
    const walk = (part: Part): void => {
      kinds.add(part.kind);
      if (part.kind === 'optional') part.parts.forEach(walk);
      if (part.kind === 'either') part.branches.flat().forEach(walk);
    };
    for (const block of vocabulary) for (const fact of block.facts) fact.parts.forEach(walk);
    const wanted = [...kinds].map((kind) => RULE_OF[kind]).filter((rule) => rule !== 'keyword');
    expect(wanted.filter((rule) => !rules.has(rule))).toEqual([]);
  });

  it.each(Object.entries(HOSTS))('says of `%s` only what the parser reads', (rule, host) => {
    fc.assert(
      fc.property(samplesOf(rules, rule), (text) => {
        // As the page says of `unsigned`, a name right behind a bare number is read as its unit.
        fc.pre(!/(?:^|\s)[\d.]+ (?!(?:mm|in|ft|kg|at|to|rest|per|every|stiffness|fan)\b)\p{L}/u.test(text));
        // A grammar does not know that a count has no unit.
        fc.pre(rule !== 'item' || !/^for \S+ \S+ (?:mm|in|kg\/m2)(?: ± 10 %)? at /.test(text));
        expect(
          parse(`${host(text)}\n`, 'a.booth').problems.map(({ message }) => message),
          host(text),
        ).toEqual([]);
      }),
      { numRuns: 80, seed: 20_261_126 },
    );
  });

  it.each([
    ['size', '3 m x'],
    ['size', '3 m , 2 m'],
    ['position', '3 m 2 m'],
    ['bands', '63 Hz 3 dB'],
    ['bands', 'octave 63 Hz 3 dB ,'],
    ['pairs', '3 L/s 5 Pa 4 L/s 2 Pa'],
    ['hours', '6:00 22:00'],
    ['hours', '6:00 to 22:00 23:00 to 1:00'],
    ['clock', '25:00'],
    ['clock', '7:5'],
    ['faces', 'front back'],
    ['price', '3 EUR per'],
    ['item', '7 38 EUR'],
    ['item', 'for 7 at 38 EUR'],
    ['fixings', '16 mm every 400 mm'],
    ['take', '12 min'],
    ['take', '12 min rest 5 min fan'],
    ['nominal', '2 x 4'],
    ['clause', 'from nowhere'],
    ['path', 'a..b'],
    ['name', '7a'],
  ])('leaves no room in `%s` for `%s`', (rule, text) => {
    expect(parse(`${HOSTS[rule]!(text)}\n`, 'a.booth').problems.length).toBeGreaterThan(0);
  });
});
