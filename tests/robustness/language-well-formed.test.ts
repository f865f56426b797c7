import { type CheckResult, checkParsed, format, parse, type Statement, vocabulary } from '@boothwright/language';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fixtures } from './language-fixtures.js';
import { expectAllSound } from './language-invariants.js';
import { everyFact, wellFormed } from './language-well-formed.js';

/** A fixed budget and seed: the same texts on every machine. */
const BUDGET = { numRuns: 400, seed: 20_261_126 } as const;

describe('texts of which every line is right', () => {
  it.each(everyFact().map(({ fact, text }) => [fact.keyword || fact.example, text] as const))(
    'with `%s` are read without a message from the parser, and mean the same when they are formatted',
    (_, text) => {
      fc.assert(fc.property(text, expectSame), { ...BUDGET, numRuns: 12 });
    },
  );

  it('are whole specs that mean the same when they are formatted', () => {
    fc.assert(fc.property(wellFormed, expectSame), BUDGET);
  }, 300_000);

  it('are checked with every range inside the text and no failure', () => {
    fc.assert(fc.property(wellFormed, expectAllSound), BUDGET);
  }, 300_000);
});

function expectSame(text: string): void {
  const before = parse(text, 'spec.booth');
  expect(
    before.problems.map(({ message }) => message),
    text,
  ).toEqual([]);
  const formatted = format(text);
  const after = parse(formatted, 'spec.booth');
  expect(shape(after.tree), `${text}\n--- became\n${formatted}`).toEqual(shape(before.tree));
  const [one, two] = [before, after].map((parsed) => meaning(checkParsed(parsed, () => ({ kind: 'missing' }))));
  expect(two, `${text}\n--- became\n${formatted}`).toBe(one);
}

/** A tree or a spec without the places of its parts in the text, and without blanks: `0.5mm` becomes `0.5 mm`. */
function shape(value: unknown): unknown {
  return JSON.parse(plain(value));
}

const PLACES = new Set(['from', 'to', 'headerTo', 'range', 'nameRange', 'materialRange', 'spaced', 'fact']);

function plain(value: unknown): string {
  return JSON.stringify(value, (key, inner: unknown) => {
    if (PLACES.has(key) && (key !== 'from' || typeof inner !== 'object')) return undefined;
    if (/Range$/.test(key)) return undefined;
    if (inner instanceof Map) return [...inner];
    return typeof inner === 'string' ? inner.replace(/\s+/g, '') : inner;
  });
}

function meaning({ spec, problems }: CheckResult): string {
  return plain([spec, problems.map(({ id, message, hint }) => [id, message, hint])]);
}

it('the fixture with every word of the language has every keyword', () => {
  const { text } = fixtures[0]!;
  const words = new Set(vocabulary.flatMap((block) => block.facts.map(({ keyword }) => keyword)).filter(Boolean));
  const used = new Set<string>();
  const walk = (statements: readonly Statement[]): void => {
    for (const statement of statements) {
      if (statement.fact) used.add(statement.fact.keyword);
      walk(statement.block?.statements ?? []);
    }
  };
  const parsed = parse(text, 'spec.booth');
  walk(parsed.tree.statements);
  expect(parsed.problems).toEqual([]);
  expect([...words].filter((word) => !used.has(word))).toEqual([]);
});
