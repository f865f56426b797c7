import type { SmallestStep } from './comparison-document.js';

// They only put differences in order and weigh them against each other; no verdict rests on them.

/** By unit as the effects carry it; a currency and every unit that is not listed has the last one. */
export const smallestSteps: readonly SmallestStep[] = [
  step('dB', 1, false, 'common practice', 'about the least difference of level that a listener notices'),
  step('dB in a band', 2, false, 'judgement', 'one third octave alone is heard less than the whole'),
  step('NC', 1, false, 'common practice', 'criteria are told in whole points'),
  step('points', 1, false, 'common practice', 'ratings are told in whole points'),
  step('s', 0.05, true, 'common practice', 'about the least share of a decay that a listener notices'),
  step('ppm', 100, false, 'judgement', 'about what two meters of the room kind differ by'),
  step('K', 0.5, false, 'judgement', 'about the least difference of warmth that a person notices'),
  step('min', 0.1, true, 'judgement', 'a tenth of the time'),
  step('h', 1, false, 'judgement', 'an hour of the day'),
  step('mm', 10, false, 'judgement', 'about what a booth is built to'),
  step('count', 1, false, 'judgement', 'one more or less'),
  step('else', 0.05, true, 'judgement', 'a twentieth of a mass, a load, a cost, a flow or a frequency'),
];

function step(
  unit: string,
  size: number,
  relative: boolean,
  evidence: SmallestStep['evidence'],
  why: string,
): SmallestStep {
  return { unit, size, relative, evidence, why };
}

/** The step for a figure of this unit. */
export function smallestStep(unit: string): SmallestStep {
  const name = /^dB(A|Z|FS)?$/.test(unit) ? 'dB' : unit;
  return smallestSteps.find((one) => one.unit === name) ?? (smallestSteps[smallestSteps.length - 1] as SmallestStep);
}

/** The difference in smallest steps; null where one figure is not known. */
export function stepsBetween(old: number | null, now: number | null, unit: string): number | null {
  if (old === null || now === null) return null;
  const { size, relative } = smallestStep(unit);
  const one = relative ? size * Math.max(Math.abs(old), Math.abs(now)) : size;
  return one > 0 ? Math.abs(now - old) / one : 0;
}

/** Differences below this share of the larger figure are rounding. */
const rounding = 1e-9;

export function differs(old: number | null, now: number | null): boolean {
  if (old === null || now === null) return old !== now;
  return Math.abs(old - now) > rounding * Math.max(1, Math.abs(old), Math.abs(now));
}
