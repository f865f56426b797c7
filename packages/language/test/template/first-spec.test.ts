import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  type Answers,
  catalogueText,
  checkSpec,
  defaults,
  firstSpec,
  format,
  parse,
  questions,
} from '../../src/index.js';

const checked = (text: string) =>
  checkSpec('a.booth', { read: (path) => (path === 'a.booth' ? { kind: 'text', text } : { kind: 'missing' }) });
const errors = (text: string) => checked(text).problems.filter(({ severity }) => severity === 'error');
const examples: Answers = Object.fromEntries(questions.map(({ name, example }) => [name, example]));

it('writes a spec without an error when nothing is known', () => {
  const { text, refused } = firstSpec({});
  expect(refused).toEqual([]);
  expect(errors(text)).toEqual([]);
  expect(checked(text).spec.booths).toHaveLength(1);
});

it('states every example answer', () => {
  const { text, refused } = firstSpec({ ...examples, flame: 'open-flued' });
  expect(refused).toEqual([]);
  expect(text).not.toContain(': not stated');
  const { spec, problems } = checked(text);
  expect(problems.filter(({ severity }) => severity !== 'hint')).toEqual([]);
  expect(spec.site?.title).toBe('back bedroom');
  expect(spec.site?.room?.width.value).toBeCloseTo(3.6);
  expect(spec.site?.sources.map(({ kind }) => kind)).toEqual(['shaped', 'impact']);
  expect(spec.site?.appliances[0]?.flue.value).toBe('open-flued');
  expect(spec.site?.neighbours[0]?.separation).toBeDefined();
  expect(spec.session?.people.value).toBe(1);
  expect(spec.booths[0]?.vents).toHaveLength(2);
  expect(spec.requirements.map(({ kind }) => kind)).toContain('cost');
});

it('describes a wardrobe as it stands: one board, gaps without a seal, no lining', () => {
  const { text } = firstSpec({ kind: 'wardrobe', space: '1.20 m x 0.60 m x 2.00 m' });
  const booth = checked(text).spec.booths[0];
  expect(booth?.faces.left?.assembly.layers).toHaveLength(1);
  expect(booth?.linings).toEqual([]);
  expect(booth?.doors[0]?.thresholdGap.value).toBeCloseTo(0.002);
});

it('names the defaults of the language that stand in for what is not stated', () => {
  const { text } = firstSpec({});
  const named = [...text.matchAll(/the default ([a-z0-9-]+) stands in, (.*)/g)];
  expect(named.length).toBeGreaterThan(5);
  for (const [, name, value] of named) expect(defaults.find((entry) => entry.name === name)?.text).toBe(value);
});

it('takes a unit at the end for the whole size', () => {
  const { text } = firstSpec({ room: '360 x 310 x 245 cm' });
  expect(text).toContain('360 cm x 310 cm x 245 cm');
});

it('takes layers in the language where choices are offered', () => {
  const { text, refused } = firstSpec({ walls: 'osb 18 mm; air 40 mm; gypsum-board 12.5 mm' });
  expect(refused).toEqual([]);
  expect(checked(text).spec.assemblies.get('shell')?.layers).toHaveLength(3);
});

it('leaves out an answer that the language does not take, and says why where it would stand', () => {
  const { text, refused } = firstSpec({ doorway: '2 kg x 3 m', effort: 'x' });
  expect(refused.map(({ name }) => name)).toEqual(['doorway']);
  expect(refused[0]?.message).toMatch(/length/);
  expect(text).toMatch(/# doorway: left out \(.*length/);
});

it('leaves out an answer that does not fit the others', () => {
  const { text, refused } = firstSpec({ space: '1 m x 1 m x 2.10 m', door: '3 m x 1.9 m' });
  expect(refused.map(({ name }) => name)).toEqual(['door']);
  expect(errors(text)).toEqual([]);
});

it('starts with a booth that fits a low room', () => {
  const { text, refused } = firstSpec({ room: '2 m x 1.2 m x 1.9 m' });
  expect(refused).toEqual([]);
  expect(text).toContain('outside 1.34 m x 1.08 m x 1.71 m');
});

it('asks only for materials of the catalogue in what it offers', () => {
  for (const { name, choices } of questions) {
    for (const { value } of choices ?? []) {
      const { refused } = firstSpec({ neighbour: 'above', [name]: value });
      expect(refused, `${name} ${value}`).toEqual([]);
    }
  }
  expect(catalogueText).toContain('material particle-board');
});

it('holds for any answers: the text reads, formats to itself and checks without an error', () => {
  const lengths = fc.oneof(fc.double({ min: 0, max: 5, noNaN: true }), fc.double({ noNaN: true }));
  const unit = fc.constantFrom('m', 'mm', 'cm', 'ft', 'kg', '');
  const size = fc
    .tuple(lengths, lengths, lengths, unit)
    .map(([a, b, c, u]) => `${a.toFixed(2)} ${u} x ${b.toFixed(2)} ${u} x ${c.toFixed(2)} ${u}`);
  const answer = fc.oneof(
    fc.constantFrom(...questions.flatMap(({ example, choices }) => [example, ...(choices ?? []).map((c) => c.value)])),
    size,
    fc.constantFrom('}', '{', '" x', 'osb 18 mm } site {', '# end', 'a; b', '\\', 'gypsum-board 3 m', '0 mm', '1e99 m'),
    fc.string({ unit: 'binary', maxLength: 40 }),
  );
  const own = questions.map(
    ({ name, example, choices }) =>
      [
        name,
        fc.option(
          fc.oneof(
            { weight: 3, arbitrary: fc.constantFrom(example, ...(choices ?? []).map((c) => c.value)) },
            { weight: 1, arbitrary: answer },
          ),
          { nil: undefined },
        ),
      ] as const,
  );
  fc.assert(
    fc.property(fc.record(Object.fromEntries(own)), (given) => {
      const said = Object.fromEntries(Object.entries(given).filter(([, value]) => value !== undefined)) as Answers;
      const { text } = firstSpec(said);
      expect(parse(text, 'a.booth').problems.filter(({ severity }) => severity === 'error')).toEqual([]);
      expect(format(text)).toBe(text);
      expect(errors(text)).toEqual([]);
    }),
    { numRuns: 50, seed: 20260 },
  );
}, 60_000);
