import { readFileSync } from 'node:fs';
import { createAssessor, resultSchema } from '@boothwright/assessment';
import { checkSpec, parse } from '@boothwright/language';
import { renderCheckText, renderProblems } from '@boothwright/presentation';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { expect, test } from 'vitest';
import { every } from './every.js';

const matches = new Ajv2020({ strict: false, allowUnionTypes: true }).compile(resultSchema);

/**
 * The whole way of the command line without its process: text, checked spec, numbers, printed report. The variants take
 * most of the time and go the same way as the base, so they come along only now and then.
 */
function expectWholeWay(
  text: string,
  assess: ReturnType<typeof createAssessor>['assess'],
  withVariants: boolean,
): void {
  const file = 'spec.booth';
  const { spec, problems, files } = checkSpec(file, {
    read: (path) => (path === file ? { kind: 'text', text } : { kind: 'missing' }),
  });
  const result = assess(withVariants ? spec : { ...spec, variants: [] });
  if (!matches(result)) expect.fail(`the result does not match its schema: ${JSON.stringify(matches.errors)}`);
  const met = result.requirements.filter(({ verdict }) => verdict === 'met');
  const outside = spec.unread.filter(({ part }) => part === 'outside');
  // A line that nobody could place may have been anything, so nothing may count as met beside it.
  if (outside.length > 0) expect(met).toEqual([]);
  expect(renderCheckText(result, problems, { colour: false, width: 100, detail: 'full' })).not.toBe('');
  renderProblems(problems, new Map(files.map((parsed) => [parsed.file, parsed.text])), {
    colour: false,
    width: 100,
    detail: 'full',
  });
}

/** Prime, so that the positions wander through the columns of the lines. */
const variantsEvery = 23;

/** Assessing takes some ten times as long as reading. */
const assessedBudget = 300;

test.each(['thin-gap-wall/thin-gap-wall', 'tram-alcove/tram-alcove', 'under-the-nursery/under-the-nursery'])(
  'a spec with one character missing is assessed and printed, at places all over it: %s',
  (name) => {
    const text = readFileSync(new URL(`../../shared/examples/${name}.booth`, import.meta.url), 'utf8');
    expect(parse(text, name).problems).toEqual([]);
    const { assess } = createAssessor();
    const step = every(text.length, assessedBudget);
    for (let at = 0; at < text.length; at += step) {
      expectWholeWay(text.slice(0, at) + text.slice(at + 1), assess, (at / step) % variantsEvery === 0);
    }
  },
  900_000,
);
