import { type Block, type Part, units, vocabulary } from '@boothwright/language';
import fc from 'fast-check';
import { describe, it } from 'vitest';
import { fixtures } from './language-fixtures.js';
import { expectAllSound, expectFormatSound, expectSound } from './language-invariants.js';

/** A fixed budget and seed: the same texts on every machine. The long run takes other texts each time. */
const isLong = process.env.BOOTHWRIGHT_LONG === '1';
const BUDGET = isLong ? { numRuns: 60_000 } : { numRuns: 1500, seed: 20_251_125 };
const PATIENCE = isLong ? 7_200_000 : 300_000;

const name = fc.constantFrom(
  'gap',
  'shell',
  'gypsum-board',
  'mineral-wool-40',
  'osb',
  'tram',
  'box',
  'entry',
  'softwood',
  'x',
  'm',
  'open-weave-cloth',
);
const number = fc.oneof(
  fc.integer({ min: 0, max: 5000 }).map(String),
  fc.constantFrom('0.5', '2-1/2', '3/4', '1e3', '12.50', '-3', '- 3', '0,9', '1e999'),
);
const unit = fc.constantFrom(...units.map((entry) => entry.unit), '', 'furlong', 'kg/sqm', 'm^2', 'm2.kg/s3');
const quantity = fc
  .tuple(number, fc.constantFrom(' ', ''), unit, fc.constantFrom('', '', '', ' ± 10 %', ' +/- 2 mm'))
  .map((parts) => parts.join(''));
const expression = fc.letrec<{ value: string }>((tie) => ({
  value: fc.oneof(
    { maxDepth: 3, withCrossShrink: true },
    quantity,
    name,
    fc
      .tuple(tie('value'), fc.constantFrom(' + ', ' - ', ' * ', '/', '*', ' -'), tie('value'))
      .map((parts) => parts.join('')),
    tie('value').map((inner) => `(${inner})`),
  ),
})).value;

const clock = fc.constantFrom(
  '06:00',
  '6:00',
  '22:30',
  '24:00',
  '25:00',
  '6:70',
  '6:5',
  '6 h',
  '6 pm',
  '6:30 pm',
  '1:2:3',
  ':30',
  '6:',
);

/** Text for one part of a line as the vocabulary has it, mostly right. */
function part(of: Part): fc.Arbitrary<string> {
  switch (of.kind) {
    case 'quantity':
    case 'amount':
    case 'any-value':
    case 'tokens':
      return expression;
    case 'size':
    case 'position':
      return fc
        .array(expression, { minLength: 1, maxLength: of.axes.length })
        .map((list) => list.join(of.kind === 'size' ? ' x ' : ', '));
    case 'choice':
      return fc.constantFrom(...of.options, 'nonsense');
    case 'literal':
      return fc.constantFrom(of.word, of.word, of.word, '<', '');
    case 'optional':
      return fc.oneof(fc.constant(''), line(of.parts));
    case 'either':
      return fc.oneof(...of.branches.map(line));
    case 'face':
    case 'faces':
      return fc.constantFrom('front', 'left, right', 'walls', 'roof', 'top');
    case 'bands':
      return fc
        .tuple(
          fc.constantFrom('octave', 'third', ''),
          fc.array(
            fc.tuple(quantity, quantity).map((pair) => pair.join(' ')),
            { minLength: 1, maxLength: 3 },
          ),
        )
        .map(([grid, list]) => `${grid} ${list.join(', ')}`);
    case 'clock':
      return clock;
    case 'hours':
      return fc
        .array(
          fc.tuple(clock, fc.constantFrom(' to ', ' to ', ' to ', '-', ' '), clock).map((words) => words.join('')),
          { minLength: 1, maxLength: 3 },
        )
        .map((spans) => spans.join(', '));
    case 'pairs':
      return fc
        .array(
          fc.tuple(quantity, quantity).map((pair) => pair.join(' ')),
          { minLength: 1, maxLength: 4 },
        )
        .map((points) => points.join(', '));
    case 'price':
      return fc.constantFrom('7.50 EUR per m2', '3 USD', '4', '5 EUR per');
    case 'nominal':
      return fc.constantFrom('2x4', '3x5');
    case 'title':
    case 'text':
      return fc.constantFrom('"a title"', '', '"open', '"# { }"');
    case 'path':
      return fc.array(name, { minLength: 1, maxLength: 4 }).map((words) => words.join('.'));
    default:
      return name;
  }
}

function line(parts: readonly Part[]): fc.Arbitrary<string> {
  return parts.length === 0 ? fc.constant('') : fc.tuple(...parts.map(part)).map((words) => words.join(' '));
}

function block(of: Block, depth: number): fc.Arbitrary<string> {
  const facts = of.facts.map((fact) => {
    const head = line(fact.parts).map((rest) => `${fact.keyword} ${rest}`);
    const inner =
      fact.block && depth > 0 ? vocabulary.find((candidate) => candidate.name === fact.block!.name) : undefined;
    if (!inner) return head;
    return fc
      .tuple(head, block(inner, depth - 1), fc.constantFrom('}', '}', '}', '', '}}'))
      .map(([start, body, end]) => `${start} {\n${body}\n${end}`);
  });
  const noise = fc.constantFrom(
    '',
    '# a remark',
    '# allow value-unusual: as built',
    '# allow third-leaf',
    '}',
    '{',
    '$',
    '\t',
    '"',
    '´',
    '\u{1f3a4}',
  );
  const separator = fc.constantFrom('\n', '\n', '\n', '; ', ' # end\n', '\n\n\n', '\r\n');
  return fc
    .array(
      fc
        .tuple(fc.oneof({ weight: 9, arbitrary: fc.oneof(...facts) }, { weight: 1, arbitrary: noise }), separator)
        .map((pair) => pair.join('')),
      { maxLength: 6 },
    )
    .map((lines) => lines.join(''));
}

const spec = block(vocabulary[0]!, 3).map((body) => `use catalog\n${body}`);

describe('texts that nearly follow the grammar', () => {
  it(
    'are read and checked without a failure',
    () => {
      fc.assert(fc.property(spec, expectSound), BUDGET);
    },
    PATIENCE,
  );

  it(
    'are formatted to the same tokens, and a second time to the same text',
    () => {
      fc.assert(fc.property(spec, expectFormatSound), BUDGET);
    },
    PATIENCE,
  );
});

describe('texts that do not', () => {
  it(
    'are read, checked and formatted without a failure',
    () => {
      const text = fc.oneof(
        fc.string({ maxLength: 200 }),
        fc.string({ unit: 'binary', maxLength: 200 }),
        fc
          .array(
            fc.constantFrom(
              'assembly',
              'booth',
              'a',
              '{',
              '}',
              '(',
              ')',
              '"',
              '#',
              '\n',
              '\r',
              ' ',
              '12',
              'mm',
              '.',
              '..',
              '-',
              '±',
              ',',
              ';',
              '=',
              'x',
              '2x4',
              'use',
              'variant',
              'let',
            ),
            { maxLength: 60 },
          )
          .map((words) => words.join(' ')),
      );
      fc.assert(
        fc.property(text, (source) => {
          expectAllSound(source);
        }),
        BUDGET,
      );
    },
    PATIENCE,
  );

  it(
    'nor do specs with two stretches swapped or doubled',
    () => {
      const { text } = fixtures[0]!;
      const place = fc.integer({ min: 0, max: text.length });
      fc.assert(
        fc.property(place, place, place, (a, b, c) => {
          const [from, to, at] = [Math.min(a, b), Math.max(a, b), c];
          const mixed = text.slice(0, at) + text.slice(from, Math.min(to, from + 300)) + text.slice(at);
          expectAllSound(mixed);
        }),
        { ...BUDGET, numRuns: BUDGET.numRuns / 4 },
      );
    },
    PATIENCE,
  );
});
