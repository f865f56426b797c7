import { expect, it } from 'vitest';
import { onlyBooth, onlyVerdict } from '../fixtures/assessed.js';
import { booth, given, lining, requirement, sheet, shell, spec, wool } from '../fixtures/spec-builder.js';

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

/** Half as much lining: the mean absorption stays below a half up to 5 kHz. */
const partly = booth(shell, { linings: [lining(['left', 'back', 'roof'], 0.6, sheet(wool, 0.05))] });

it('require reverberation is judged by the longest decay of the asked bands', () => {
  const base = spec({ booths: [partly] });
  const times = onlyBooth(base).roomSound!.decay.map(({ seconds }) => seconds as number);
  const verdict = onlyVerdict({ ...base, requirements: [reverberation(0.3, 1000, 4000)] });
  expect(verdict.verdict).toBe('met');
  expect(verdict.value?.value).toBe(Math.max(...times.slice(13, 20)));
});

it('require reverberation is judged by damped modes below the Schroeder frequency', () => {
  const verdict = onlyVerdict(spec({ requirements: [reverberation(0.3, 125, 125)] }));
  expect(verdict.verdict).not.toBe('not-assessed');
  expect(verdict.explanation).toContain('damped modes');
  expect(verdict.value!.low).toBeLessThan(verdict.value!.value);
  expect(verdict.value!.high).toBeGreaterThan(verdict.value!.value);
});

it('require reverberation is not assessed where no mode lies near, unless another band misses', () => {
  // The first mode of 1.15 x 1.35 x 2.00 m lies at 86 Hz: nothing rings at 50 Hz.
  const verdict = onlyVerdict(spec({ requirements: [reverberation(5, 50, 50)] }));
  expect(verdict.verdict).toBe('not-assessed');
  expect(verdict.explanation).toContain('No mode');
  expect(onlyVerdict(spec({ requirements: [reverberation(5, 50, 500)] })).value).not.toBeNull();
});

it('require reverberation is missed when a band that can be judged misses, whatever the others', () => {
  const bare = spec({ booths: [booth(shell, { linings: [] })], requirements: [reverberation(0.01, 100)] });
  expect(onlyVerdict(bare).verdict).toBe('missed');
});

it('require reverberation can be missed by being too dry', () => {
  const verdict = onlyVerdict(spec({ booths: [partly], requirements: [reverberation(2, 1000, 4000, 1)] }));
  expect(verdict.verdict).toBe('missed');
  expect(verdict.explanation).toContain('at least');
});

it('require reverberation is judged in a dry booth too, between an evenly mixed field and none', () => {
  const verdict = onlyVerdict(spec({ requirements: [reverberation(0.3, 2000, 4000)] }));
  expect(verdict.verdict).toBe('met');
  expect(verdict.explanation).toContain('few reflections');
});

it('require reverberation is not assessed in a booth with an open face', () => {
  const open = { ...partly, faces: { ...partly.faces, roof: undefined } };
  const verdict = onlyVerdict(spec({ booths: [open], requirements: [reverberation(0.3, 1000, 4000)] }));
  expect(verdict.verdict).toBe('not-assessed');
  expect(verdict.explanation).toContain('No build-up is given for roof');
});

it('require reverberation is not assessed beyond the bands that are computed', () => {
  const low = onlyVerdict(spec({ booths: [partly], requirements: [reverberation(0.3, 20, 25)] }));
  expect(low.verdict).toBe('not-assessed');
  expect(low.explanation).toContain('outside the bands');
  const high = onlyVerdict(spec({ booths: [partly], requirements: [reverberation(0.3, 1000, 10_000)] }));
  expect(high.verdict).toBe('not-assessed');
});

it('require reverberation names one band once', () => {
  const verdict = onlyVerdict(spec({ booths: [partly], requirements: [reverberation(0.3, 250, 5000)] }));
  expect(verdict.explanation).not.toMatch(/(\S+ k?Hz) to \1/);
});
