import { type Block, type DimensionName, type Fact, type Part, units, vocabulary } from '@boothwright/language';
import fc from 'fast-check';

/** Words that start no line anywhere, so that each can be a name. */
const name = fc.constantFrom('alpha', 'beta-2', 'osb', 'gypsum-board', 'steel-stud', 'glass-wool', 'straße', 'x_1');

const number = fc.oneof(fc.integer({ min: 1, max: 400 }).map(String), fc.constantFrom('0.5', '12.5', '1.20', '0.3'));

function quantity(dimension: DimensionName): fc.Arbitrary<string> {
  if (dimension === 'count') return fc.integer({ min: 1, max: 12 }).map(String);
  const known = units.filter((entry) => entry.dimension === dimension).map((entry) => entry.unit);
  const tolerance = dimension === 'level' || dimension === 'temperature' ? [''] : ['', '', ' ± 10 %'];
  return fc
    .tuple(number, fc.constantFrom(' ', '  ', ''), fc.constantFrom(...known), fc.constantFrom(...tolerance))
    .map((parts) => parts.join(''));
}

const length = quantity('length');
const clock = fc
  .tuple(fc.integer({ min: 0, max: 23 }), fc.integer({ min: 0, max: 59 }), fc.boolean())
  .map(
    ([hour, minute, padded]) => `${padded ? String(hour).padStart(2, '0') : hour}:${String(minute).padStart(2, '0')}`,
  );
const listOf = (one: fc.Arbitrary<string>, most: number): fc.Arbitrary<string> =>
  fc.array(one, { minLength: 1, maxLength: most }).map((items) => items.join(', '));

/** Text for one part of a line, as the vocabulary has it and never otherwise. */
function part(of: Part): fc.Arbitrary<string> {
  switch (of.kind) {
    case 'quantity':
      return quantity(of.dimension);
    case 'amount':
      return fc.oneof(length, quantity('mass-per-area'));
    case 'any-value':
    case 'tokens':
      return fc.constantFrom('6 mm', '(3 mm + 2 mm) * 2', '64 dBA', '20 degC');
    case 'size':
      return fc
        .tuple(fc.tuple(...of.axes.map(() => length)), fc.constantFrom(' x ', ' × '))
        .map(([sides, times]) => sides.join(times));
    case 'position':
      return fc.tuple(...of.axes.map(() => length)).map((places) => places.join(', '));
    case 'choice':
      return fc.constantFrom(...of.options);
    case 'literal':
      return fc.constant(of.word);
    case 'optional':
      return fc.oneof(fc.constant(''), line(of.parts));
    case 'either':
      return fc.oneof(...of.branches.map(line));
    case 'face':
      return fc.constantFrom('front', 'left', 'roof');
    case 'faces':
      return fc.constantFrom('front', 'left, right', 'walls', 'roof');
    case 'bands':
      return fc
        .tuple(fc.constantFrom('octave', 'third'), fc.constantFrom('63 Hz', '1 kHz'), quantity(of.dimension))
        .map((words) => words.join(' '));
    case 'clock':
      return clock;
    case 'hours':
      return listOf(
        fc.tuple(clock, clock).map((ends) => ends.join(' to ')),
        3,
      );
    case 'pairs':
      return listOf(
        fc.tuple(quantity(of.first), quantity(of.second)).map((pair) => pair.join(' ')),
        3,
      );
    case 'price':
      return fc.constantFrom('7.50 EUR', of.per ? '7.50 EUR per m2' : '3 USD');
    case 'nominal':
      return fc.constantFrom('2x4', '2x3');
    case 'title':
      return fc.constantFrom('', '"a title # with { signs }"');
    case 'text':
      return fc.constant('"a text"');
    case 'path':
      return fc.constantFrom('alpha', 'alpha.beta-2', 'site.alpha.hours');
    default:
      return name;
  }
}

function line(parts: readonly Part[]): fc.Arbitrary<string> {
  if (parts.length === 0) return fc.constant('');
  return fc.tuple(...parts.map(part)).map((words) => words.filter((word) => word !== '').join(' '));
}

function statement(fact: Fact, depth: number): fc.Arbitrary<string> {
  const head = line(fact.parts).map((rest) => `${fact.keyword} ${rest}`.trim());
  const clause = fact.sourced ? fc.constantFrom('', '', ' from "a note"', ' from measured "a scale"') : fc.constant('');
  const inner = fact.block && vocabulary.find((candidate) => candidate.name === fact.block!.name)!;
  const body = !inner ? fc.constant('') : depth > 0 ? blockText(inner, depth - 1) : fc.constant(' { }');
  const whole = fc.tuple(head, clause, body).map((parts) => parts.join(''));
  return fact.block && !fact.block.required
    ? fc.oneof(
        whole,
        fc.tuple(head, clause).map((parts) => parts.join('')),
      )
    : whole;
}

/** Blanks, line ends and comments as people leave them, all of which say nothing. */
const separator = fc.constantFrom('\n', '\n', '\n  ', '; ', ';', '  # why\n', '\n\n\n', '\r\n', '\n\t', ' ;\t');

function blockText(of: Block, depth: number): fc.Arbitrary<string> {
  return lines(of, depth).map((body) => ` {\n${body}\n}`);
}

function lines(of: Block, depth: number): fc.Arbitrary<string> {
  return fc
    .array(fc.tuple(fc.oneof(...of.facts.map((fact) => statement(fact, depth))), separator), { maxLength: 6 })
    .map((pairs) => pairs.flat().join(''));
}

/** One line of each fact of the language, in the blocks around it. */
export function everyFact(): readonly { readonly fact: Fact; readonly text: fc.Arbitrary<string> }[] {
  return vocabulary.flatMap((block) =>
    block.facts.map((fact) => ({ fact, text: statement(fact, 1).map((text) => within(block, text)) })),
  );
}

/** The outermost block that has it, told last so that it stays. */
const openers: ReadonlyMap<string, readonly [block: string, header: string]> = new Map(
  vocabulary
    .toReversed()
    .flatMap((block) =>
      block.facts.flatMap((fact) => (fact.block ? [[fact.block.name, [block.name, headerOf(fact)]] as const] : [])),
    ),
);

/** The header of the example of a fact, which is a right one. */
function headerOf(fact: Fact): string {
  const brace = fact.example.indexOf('{');
  return brace === -1 ? fact.example : fact.example.slice(0, brace).trim();
}

function within(block: Block, text: string): string {
  const opener = openers.get(block.name);
  if (!opener) return text;
  const [around, header] = opener;
  return within(vocabulary.find(({ name: other }) => other === around)!, `${header} {\n${text}\n}`);
}

/** Whole texts of which every line is right, whatever they mean together. */
export const wellFormed: fc.Arbitrary<string> = lines(vocabulary[0]!, 3).map((body) => `use catalog\n${body}`);
