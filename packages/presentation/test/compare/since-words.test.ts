import type { ComparisonDocument, Effect, RequirementChange } from '@boothwright/assessment';
import { expect, it } from 'vitest';
import { sinceWords } from '../../src/compare/since-words.js';

const effect = (what: string, unit: string, old: number, now: number, steps = 3, of = 'den') =>
  ({ of, topic: 'mass', what, unit, old, new: now, turn: null, steps }) satisfies Effect;
const turned = (turn: RequirementChange['turn'], booth: string | null = 'den') =>
  ({ turn, booth }) as unknown as RequirementChange;
const comparison = (requirements: readonly RequirementChange[], effects: readonly Effect[]) =>
  ({ requirements, effects }) as unknown as ComparisonDocument;

it('sinceWords(comparison, booth) tells lost and gained verdicts, then the largest figures with their sign', () => {
  const found = comparison(
    [turned('lost'), turned('lost', null), turned('gained'), turned('worse')],
    [effect('mass', 'kg', 387, 449), effect('room tone', 'dBFS', -49, -52), effect('fan', 'dBA', 21, 20)],
  );
  expect(sinceWords(found, 'den')).toBe(
    'since the last commit: 2 lost, 1 gained, mass +62 kg, room tone -3 dB, fan -1.0 dB',
  );
});

it('sinceWords(comparison, booth) leaves out other booths and what hardly moved, and is nothing where nothing is left', () => {
  const found = comparison(
    [turned('lost', 'attic')],
    [effect('mass', 'kg', 387, 387.4, 0.2), effect('mass', 'kg', 200, 260, 6, 'attic')],
  );
  expect(sinceWords(found, 'den')).toBeUndefined();
  expect(sinceWords(found, 'attic')).toBe('since the last commit: 1 lost, mass +60 kg');
});
