import { expect, it } from 'vitest';
import { onlyBooth, onlyVerdict } from '../fixtures/assessed.js';
import { booth, given, requirement, shell, spec } from '../fixtures/spec-builder.js';

function reverberation(max: number, fromHz: number, toHz?: number, min?: number) {
  return requirement({
    kind: 'reverberation',
    text: 'require reverberation',
    max: given(max),
    min: min === undefined ? undefined : given(min),
    fromHz: given(fromHz),
    toHz: toHz === undefined ? undefined : given(toHz),
  });
}

it('require reverberation is judged by Eyring in the tightest band', () => {
  const base = spec();
  const times = onlyBooth(base).reverberation.eyringS;
  const verdict = onlyVerdict({ ...base, requirements: [reverberation(0.3, 1000, 4000)] });
  expect(verdict.verdict).toBe('met');
  expect(verdict.value?.value).toBe(Math.max(...times.slice(13, 20).map((time) => time as number)));
});

it('require reverberation is not assessed below the Schroeder frequency', () => {
  const verdict = onlyVerdict(spec({ requirements: [reverberation(0.3, 125, 125)] }));
  expect(verdict.verdict).toBe('not-assessed');
  expect(verdict.explanation).toContain('single modes');
});

it('require reverberation is not assessed when only some bands can be judged and they pass', () => {
  const verdict = onlyVerdict(spec({ requirements: [reverberation(0.3, 100)] }));
  expect(verdict.verdict).toBe('not-assessed');
  expect(verdict.value).not.toBeNull();
});

it('require reverberation is missed when a band that can be judged misses, whatever the others', () => {
  const bare = spec({ booths: [booth(shell, { linings: [] })], requirements: [reverberation(0.01, 100)] });
  expect(onlyVerdict(bare).verdict).toBe('missed');
});

it('require reverberation can be missed by being too dry', () => {
  const verdict = onlyVerdict(spec({ requirements: [reverberation(2, 1000, 4000, 1)] }));
  expect(verdict.verdict).toBe('missed');
  expect(verdict.explanation).toContain('at least');
});
