import { type Part, units, vocabulary } from '@boothwright/language';
import { describe, expect, it } from 'vitest';
import grammar from '../syntaxes/booth.tmLanguage.json' with { type: 'json' };

interface Rule {
  readonly match?: string;
  readonly begin?: string;
  readonly patterns?: readonly Rule[];
}
const repository = grammar.repository as Readonly<Record<string, Rule>>;

/** Every expression of a rule and of the rules in it. */
function expressions(rule: Rule): RegExp[] {
  const own = [rule.match, rule.begin].filter((source) => source !== undefined).map((source) => new RegExp(source));
  return [...own, ...(rule.patterns ?? []).flatMap(expressions)];
}

/** What the captures of the rule that matches first cover, or the whole match where it has none. */
function painted(text: string, ...rules: string[]): string[] {
  const matches = rules
    .flatMap((name) => expressions(repository[name]!))
    .map((expression) => expression.exec(text))
    .filter((match) => match !== null);
  const [first] = matches.sort((a, b) => a.index - b.index);
  if (first === undefined) return [];
  return first.length > 1 ? first.slice(1).filter((part) => part !== undefined) : [first[0]];
}

describe('the grammar', () => {
  const facts = vocabulary.flatMap((block) => block.facts.map((fact) => ({ block: block.name, fact })));

  it.each(
    facts.filter(({ fact }) => fact.keyword !== '').map(({ block, fact }) => [block, fact.keyword, fact] as const),
  )('paints the word that starts a line: %s %s', (_, keyword, fact) => {
    const first = keyword.split(' ')[0];
    const words = painted(`  ${fact.example}`, 'declaration', 'requirement', 'lining', 'assembly', 'fact');
    expect(words[0]?.trim()).toBe(first);
  });

  it.each(units.filter(({ unit }) => /^[A-Za-z%]/.test(unit)).map(({ unit }) => [unit]))(
    'paints a number with its unit: 12.5 %s',
    (unit) => {
      expect(painted(`12.5 ${unit} `, 'quantity')).toEqual(['12.5', unit]);
    },
  );

  it.each([
    ['2-1/2 in', ['2-1/2', 'in']],
    ['3/4 in', ['3/4', 'in']],
    ['7', ['7']],
    ['<= -62 dBFS', ['-62', 'dBFS']],
    ['12 mm - 5 mm', ['12', 'mm']],
    ['12 x 5', ['12']],
    ['200 mm;', ['200', 'mm']],
    ['2.10 m x 3 m', ['2.10', 'm']],
    ['6 turns leg 250 mm', ['6']],
    ['hours 22:30 to 6:00', ['22:30']],
    ['for osb 12 mm 7 at', ['12', 'mm']],
  ])('paints numbers as the trade writes them: %s', (text, words) => {
    expect(painted(text, 'quantity')).toEqual(words);
  });

  it('takes nominal lumber for one word', () => {
    expect(painted('frame 2x4 every 16 in', 'lumber')).toEqual(['2x4']);
  });

  it('paints every word that can be chosen', () => {
    const options = (part: Part): readonly string[] => {
      if (part.kind === 'choice') return part.options;
      if (part.kind === 'optional') return part.parts.flatMap(options);
      if (part.kind === 'either') return part.branches.flat().flatMap(options);
      return [];
    };
    const all = new Set(facts.flatMap(({ fact }) => fact.parts.flatMap(options)));
    expect(all.size).toBeGreaterThan(10);
    for (const option of all) expect(painted(` ${option} `, 'choice', 'connective'), option).toEqual([option]);
  });

  it('takes a hash for a comment only at the start of a line or after a blank', () => {
    expect(painted('# all', 'comment')).toHaveLength(1);
    expect(painted('air 5 mm # gap', 'comment')).toHaveLength(1);
    expect(painted('a#b', 'comment')).toEqual([]);
  });
});
