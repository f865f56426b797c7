import { createAssessor, type ResultDocument } from '@boothwright/assessment';
import { describe, expect, it } from 'vitest';
import { createNumbers } from '../../src/common/numbers.js';
import { openSpecs } from '../helpers/index.js';

/** An assessor that answers when it is told to. */
function onDemand() {
  const answers: (() => void)[] = [];
  return {
    answers,
    assess: () =>
      new Promise<ResultDocument>((resolve) => {
        answers.push(() => resolve({ schema: 'boothwright-result/1' } as ResultDocument));
      }),
  };
}

const text = 'let gap = 5 mm\n';

it('works a text out once, however many ask', async () => {
  const specs = openSpecs({ 'a.booth': text });
  const arrived: string[] = [];
  const { answers, assess } = onDemand();
  const numbers = createNumbers(specs.workspace, assess, { arrived: (uri) => arrived.push(uri) });
  const asked = [numbers.settle(specs.uri('a.booth')), numbers.settle(specs.uri('a.booth'))];
  expect(answers).toHaveLength(1);
  answers[0]!();
  expect(await Promise.all(asked)).toEqual([true, true]);
  expect(await numbers.settle(specs.uri('a.booth'))).toBe(false);
  expect(specs.view('a.booth').results?.schema).toBe('boothwright-result/1');
  expect(arrived).toEqual([specs.uri('a.booth')]);
});

it('works a text out anew when it was typed over while it was worked out', async () => {
  const specs = openSpecs({ 'a.booth': text });
  const arrived: string[] = [];
  const { answers, assess } = onDemand();
  const numbers = createNumbers(specs.workspace, assess, { arrived: (uri) => arrived.push(uri) });
  const first = numbers.settle(specs.uri('a.booth'));
  specs.change('a.booth', 'let gap = 6 mm\n');
  const second = numbers.settle(specs.uri('a.booth'));
  expect(answers).toHaveLength(2);
  answers[0]!();
  await first;
  expect(specs.workspace.pending(specs.uri('a.booth'))).toBeDefined();
  expect(arrived).toEqual([]);
  answers[1]!();
  await second;
  expect(specs.workspace.pending(specs.uri('a.booth'))).toBeUndefined();
  expect(arrived).toEqual([specs.uri('a.booth')]);
});

it('may fail and be asked again', async () => {
  const specs = openSpecs({ 'a.booth': text });
  const arrived: string[] = [];
  const numbers = createNumbers(specs.workspace, () => Promise.reject(new Error('no')), {
    arrived: (uri) => arrived.push(uri),
  });
  await expect(numbers.settle(specs.uri('a.booth'))).rejects.toThrow('no');
  await expect(numbers.settle(specs.uri('a.booth'))).rejects.toThrow('no');
  expect(arrived).toEqual([]);
});

describe('the build-ups', () => {
  const build = (thickness: number) =>
    `use catalog\nassembly wall {\n  gypsum-board ${thickness} mm\n}\nbooth cell {\n  inside 2 m x 2 m x 2 m\n  walls wall\n}\n`;
  const weight = (specs: ReturnType<typeof openSpecs>) =>
    specs.view('a.booth').results?.assemblies.wall?.surfaceMassKgPerM2;
  const setUp = (text = build(12.5)) => {
    const specs = openSpecs({ 'a.booth': text });
    specs.assess('a.booth');
    const told: string[] = [];
    const ended: string[] = [];
    let release = (): void => undefined;
    const numbers = createNumbers(
      specs.workspace,
      (spec, { assemblies, base, signal } = {}) => {
        signal?.addEventListener('abort', () => ended.push('ended'));
        return new Promise((resolve, reject) => {
          signal?.addEventListener('abort', () => reject(signal.reason));
          const results = createAssessor().assess(spec, {
            assemblies: (found) => setTimeout(() => assemblies?.(found)),
            base: (found) => setTimeout(() => base?.(found)),
          });
          release = () => resolve(results);
        });
      },
      {
        arrived: () => told.push('all'),
        assembliesArrived: () => told.push('build-ups'),
        baseArrived: () => told.push('base'),
      },
    );
    return { specs, numbers, told, ended, release: () => release() };
  };

  it('are there before the rest, and the rest is said to be that of an earlier text', async () => {
    const { specs, numbers, told, release } = setUp();
    const before = weight(specs)!;
    specs.change('a.booth', build(25));
    const whole = numbers.settle(specs.uri('a.booth'));
    await numbers.settleAssemblies(specs.uri('a.booth'));
    expect(told).toEqual(['build-ups']);
    expect(weight(specs)).toBeCloseTo(2 * before, 6);
    expect(specs.view('a.booth')).toMatchObject({ pending: true, assembliesPending: false });
    release();
    await whole;
    expect(told).toEqual(['build-ups', 'all']);
    expect(specs.view('a.booth')).toMatchObject({ pending: false, assembliesPending: false });
  });

  it('are followed by the whole of the spec itself, before its variants', async () => {
    const withVariant = (thickness: number) => `${build(thickness)}variant low { cell.inside.height = 1.9 m }\n`;
    const { specs, numbers, told, release } = setUp(withVariant(12.5));
    const mass = () => specs.view('a.booth').results?.booths.cell?.build.massKg;
    const ofVariant = () => specs.view('a.booth').results?.variants.low?.booths.cell?.build.massKg;
    const [before, variantBefore] = [mass()!, ofVariant()!];
    specs.change('a.booth', withVariant(25));
    const whole = numbers.settle(specs.uri('a.booth'));
    await numbers.settleBase(specs.uri('a.booth'));
    expect(told).toEqual(['build-ups', 'base']);
    expect(mass()).toBeGreaterThan(before);
    expect(ofVariant()).toBe(variantBefore);
    expect(specs.view('a.booth')).toMatchObject({ pending: true, basePending: false });
    release();
    await whole;
    expect(told).toEqual(['build-ups', 'base', 'all']);
    expect(specs.view('a.booth')).toMatchObject({ pending: false, basePending: false });
  });

  it('of a text that is typed over are ended and come to nothing', async () => {
    const { specs, numbers, told, ended } = setUp();
    const before = weight(specs)!;
    specs.change('a.booth', build(25));
    const whole = numbers.settle(specs.uri('a.booth'));
    specs.change('a.booth', build(30));
    numbers.changed(specs.uri('a.booth'));
    expect(await whole).toBe(false);
    await new Promise((resolve) => setTimeout(resolve, 5));
    expect(ended).toEqual(['ended']);
    expect(told).toEqual([]);
    expect(weight(specs)).toBe(before);
  });

  it('are shown also where a used file changed and the text itself did not', async () => {
    const board = (thickness: number) => `use catalog\nassembly wall {\n  gypsum-board ${thickness} mm\n}\n`;
    const specs = openSpecs({ 'a.booth': 'use "b.booth"\n', 'b.booth': board(12.5) });
    specs.assess('a.booth');
    const before = weight(specs)!;
    specs.change('b.booth', board(25));
    const pending = specs.workspace.pending(specs.uri('a.booth'))!;
    const { assemblies } = createAssessor().assess(pending.spec);
    expect(specs.workspace.acceptAssemblies(specs.uri('a.booth'), pending, assemblies)).toBe(true);
    expect(weight(specs)).toBeCloseTo(2 * before, 6);
  });
});
