import type { Level } from '@boothwright/language';
import { expect, it } from 'vitest';
import { onlyBooth, onlyVerdict } from '../fixtures/assessed.js';
import { given, impact, noise, place, requirement, site, spec } from '../fixtures/spec-builder.js';

function isolation(decibels: number, against = 'street') {
  return requirement({
    kind: 'isolation',
    text: `require isolation >= ${decibels} dB against ${against}`,
    limit: given<Level>({ decibels, weighting: 'none' }),
    against,
    againstRange: place(),
  });
}

it('require isolation is the A-weighted difference for the spectrum of that source', () => {
  const base = spec();
  const source = onlyBooth(base).noise.bySource[0];
  const difference = (source?.outside.dBA?.value as number) - (source?.inside.dBA?.value as number);
  const verdict = onlyVerdict({ ...base, requirements: [isolation(5)] });
  expect(verdict.value?.value).toBeCloseTo(difference, 9);
  expect(verdict.verdict).toBe('met');
  expect(onlyVerdict({ ...base, requirements: [isolation(60)] }).verdict).toBe('missed');
});

it('require isolation differs between a low and a high spectrum through the same booth', () => {
  const rumble = noise('rumble', [70, 60, 40, 20, 10, 5, 0]);
  const hiss = noise('hiss', [0, 5, 10, 30, 50, 60, 60]);
  const of = (against: string) =>
    onlyVerdict(spec({ site: site({ sources: [rumble, hiss] }), requirements: [isolation(10, against)] })).value
      ?.value as number;
  expect(of('hiss')).toBeGreaterThan(of('rumble') + 5);
});

it('require isolation is not assessed against footfall', () => {
  const verdict = onlyVerdict(
    spec({ site: site({ sources: [impact('steps')] }), requirements: [isolation(10, 'steps')] }),
  );
  expect(verdict.verdict).toBe('not-assessed');
  expect(verdict.explanation).toContain('structure');
});

it('require isolation is not met on one known band, and stays met where only the lowest octaves are unknown', () => {
  const of = (levels: (number | null)[], limit = 5) =>
    onlyVerdict(spec({ site: site({ sources: [noise('street', levels)] }), requirements: [isolation(limit)] }));
  const one = of([null, null, null, 60, null, null, null]);
  expect(one.verdict).toBe('not-assessed');
  expect(one.value).not.toBeNull();
  expect(one.explanation).toContain('the verdict is open');
  expect(of([null, null, null, 60, null, null, null], 90).verdict).toBe('missed');
  const low = of([null, null, 60, 60, 60, 60, 60]);
  expect(low.verdict).toBe('met');
  expect(low.explanation).toContain('an upper bound');
});
