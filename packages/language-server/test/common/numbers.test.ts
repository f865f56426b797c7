import type { ResultDocument } from '@boothwright/assessment';
import { expect, it } from 'vitest';
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
  const numbers = createNumbers(specs.workspace, assess, (uri) => arrived.push(uri));
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
  const numbers = createNumbers(specs.workspace, assess, (uri) => arrived.push(uri));
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
  const numbers = createNumbers(
    specs.workspace,
    () => Promise.reject(new Error('no')),
    (uri) => arrived.push(uri),
  );
  await expect(numbers.settle(specs.uri('a.booth'))).rejects.toThrow('no');
  await expect(numbers.settle(specs.uri('a.booth'))).rejects.toThrow('no');
  expect(arrived).toEqual([]);
});
