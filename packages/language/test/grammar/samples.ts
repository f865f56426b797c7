import fc from 'fast-check';
import type { Rule } from './ebnf.js';

/** Rules inside which no blank may stand: they make one word each. */
const WORDS = new Set(['name', 'clock', 'nominal', 'text', 'comment', 'number', 'unit', 'path']);

/** What a grammar cannot say: which units, names, times and lumber there are. */
const KNOWN: Readonly<Record<string, fc.Arbitrary<string>>> = {
  unit: fc.constantFrom('mm', 'kg/m2', 'kPa.s/m2', 'dB', '%', 'min', 'L/s', 'EUR'),
  number: fc.constantFrom('7', '12', '0.5', '38.00'),
  clock: fc.constantFrom('0:00', '06:00', '6:30', '22:05', '24:00'),
  nominal: fc.constantFrom('2x4', '2x3'),
  letter: fc.constantFrom('a', 'k', 'Z', 'ß'),
  digit: fc.constantFrom('0', '7'),
  digits: fc.constantFrom('1', '90'),
  // A fraction stands only before a unit of length, and `in` and `ft` are units as well as marks of a mixed number.
  literal: fc.constantFrom('7', '12 mm', '0.5 kg/m2 ± 10 %', '3/4 in', '2-1/2 in', '6 ft 2 in', '4 +/- 1'),
  'any character but a quote or a line end': fc.constantFrom('a', ' ', '#', '{', 'é'),
  'any character but a line end': fc.constantFrom('a', ' ', '"', '}', '#'),
};

/** Texts that a rule of the page allows. */
export function samplesOf(rules: ReadonlyMap<string, Rule>, name: string): fc.Arbitrary<string> {
  const { start } = fc.letrec<Record<string, string>>((tie) => ({
    ...Object.fromEntries(
      [...rules].map(([own, rule]) => [own, KNOWN[own] ?? make(rule, WORDS.has(own) ? '' : ' ', tie)]),
    ),
    start: tie(name),
  }));
  return start as fc.Arbitrary<string>;

  function make(rule: Rule, blank: string, tie: (key: string) => fc.Arbitrary<string>): fc.Arbitrary<string> {
    switch (rule.kind) {
      case 'text':
        return fc.constant(rule.text);
      case 'name':
        return KNOWN[rule.name] ?? tie(rule.name);
      case 'row':
        return fc
          .tuple(...rule.items.map((item) => make(item, blank, tie)))
          .map((parts) => parts.filter((part) => part !== '').join(blank));
      case 'choice':
        // The first way is the plainest one, so that a text ends.
        return fc.oneof({ maxDepth: 4, depthIdentifier: name }, ...rule.items.map((item) => make(item, blank, tie)));
      case 'option':
        return fc.option(make(rule.item, blank, tie), { nil: '', maxDepth: 4, depthIdentifier: name });
      case 'repeat':
        return fc
          .array(make(rule.item, blank, tie), { maxLength: 2, depthIdentifier: name })
          .map((parts) => parts.join(blank));
    }
  }
}
