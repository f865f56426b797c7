import type { Requirement } from '@boothwright/language';
import { airWayWords } from '../air/air-way-words.js';
import { freshAir } from '../air/fresh-air.js';
import type { AssessedBooth } from '../booth/assess-booth.js';
import type { RequirementResult } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { co2RiseShare } from '../uncertainty/model-uncertainty.js';
import { marginWords, rangedWords } from './sentences.js';
import { judged, notAssessed, unlessMissed } from './verdict.js';

/**
 * CO2 at the end of the session, with the fan on where there is one. It only rises, so the end is the highest. A fan whose
 * air has no way out is judged as a closed box where that misses, and not at all where it does not.
 */
export function judgeCo2(
  requirement: Extract<Requirement, { kind: 'co2' }>,
  { booth, result }: AssessedBooth,
): RequirementResult {
  const limit = requirement.limit.value;
  const base = { requirement, booth: booth.name, limit, unit: 'ppm' };
  const { air } = result;
  if (air === null) {
    return notAssessed({ ...base, explanation: 'There is no `session` block, so neither people nor time are known.' });
  }
  const way = freshAir(booth);
  const curve = air.fanOn ?? air.fanOff;
  const rise = curve.endPpm - air.supplyPpm;
  const value = {
    value: curve.endPpm,
    low: curve.endPpm - co2RiseShare * rise,
    high: curve.endPpm + co2RiseShare * rise,
    basis: 'a quarter of the rise either way, for the spread between people; docs/models/co2-in-the-booth.md',
  };
  const words = airWayWords(way);
  const assumption = words === '' ? '' : ` ${words}`;
  const off =
    air.fanOn === null
      ? ''
      : ` With the fan off it passes ${decimals(limit, 0)} ppm ${whenOff(limit, air.fanOff.minutes, air.fanOff.ppm)}.`;
  const verdict = judged({
    ...base,
    value,
    sense: 'at-most',
    limitedBy: air.fanOn === null ? 'no-fan' : 'fan',
    explanation: `${howWords(air.fanOn?.flowM3PerS, way.way === 'no-way-out')} it is ${rangedWords(value, 'ppm', 0)} after ${decimals(air.sessionMinutes, 0)} min, where at most ${decimals(limit, 0)} ppm is asked: ${marginWords(limit - value.value, 'ppm', 0)}. The supply air brings ${decimals(air.supplyPpm, 0)} ppm.${off}${assumption}`,
  });
  return way.way === 'no-way-out' ? unlessMissed(verdict, 'So the verdict is open.') : verdict;
}

function howWords(flow: number | undefined, closed: boolean): string {
  if (flow !== undefined) return `With the fan at ${decimals(flow * 1000, 1)} L/s`;
  return closed ? 'Taken as a closed box' : 'Without a fan nothing renews the air';
}

function whenOff(limit: number, minutes: readonly number[], ppm: readonly number[]): string {
  const index = ppm.findIndex((value) => value > limit);
  if (index < 0) return 'not within the session';
  if (index === 0) return 'at once';
  // Without flow the rise is a straight line, so two points give the time.
  const [before, after] = [ppm[index - 1] as number, ppm[index] as number];
  const [from, to] = [minutes[index - 1] as number, minutes[index] as number];
  return `after ${decimals(from + ((limit - before) / (after - before)) * (to - from), 0)} min`;
}
