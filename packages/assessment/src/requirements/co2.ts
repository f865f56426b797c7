import type { Requirement } from '@boothwright/language';
import { ordinaryActivity } from '../air/people-inside.js';
import type { AssessedBooth } from '../booth/assess-booth.js';
import type { AirResult } from '../result/air-result.js';
import type { RequirementResult } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { marginWords, rangedWords } from './sentences.js';
import { judged, notAssessed, unlessMissed } from './verdict.js';

/**
 * CO2 at the end of the session with the fans as the session says, or at the end of the last take where it is cut into takes and
 * rests. It only rises, so the end is the highest. A fan whose air has no way out is judged as a closed box where that
 * misses, and not at all where it does not; one without an operating point is not judged.
 */
export function judgeCo2(
  requirement: Extract<Requirement, { kind: 'co2' }>,
  { booth, result }: AssessedBooth,
): RequirementResult {
  const limit = requirement.limit.value;
  const base = { requirement, booth: booth.name, limit, unit: 'ppm' };
  const { air, ventilation } = result;
  if (air === null) {
    return notAssessed({ ...base, explanation: 'There is no `session` block, so neither people nor time are known.' });
  }
  const off = air.judged === 'off';
  const flow = air.judged === 'low' ? ventilation.low : ventilation.high;
  if (!off && flow !== null && flow.flowM3PerS === null) {
    return notAssessed({ ...base, explanation: `The flow of the fan is not known: ${flow.notes.join('; ')}.` });
  }
  const curve = off ? air.fanOff : (air.fanOn ?? air.fanOff);
  const reached = air.takes === null ? curve.endPpm : Math.max(air.takes.firstPeakPpm, air.takes.lastPeakPpm);
  const { lowShare, highShare, activityMet, effort } = air.breath;
  const rise = Math.max(0, reached - air.startPpm);
  const value = {
    value: reached,
    low: reached - (1 - lowShare) * rise,
    high: reached + (highShare - 1) * rise,
    basis: `the spread of breath between people${activityMet !== null && activityMet !== ordinaryActivity ? `, and of what a voice of effort ${effort} takes` : ''}; docs/models/co2-in-the-booth.md`,
  };
  const closed = ventilation.way === 'no-way-out';
  const assumption = ventilation.wayNote === '' ? '' : ` ${ventilation.wayNote}`;
  const whenOff =
    off || air.fanOn === null
      ? ''
      : ` With the fan off it passes ${decimals(limit, 0)} ppm ${offWords(limit, air.fanOff.minutes, air.fanOff.ppm)}.`;
  const verdict = judged({
    ...base,
    value,
    sense: 'at-most',
    limitedBy: curve.fan === 'off' || air.takes?.fanInTake === 'off' ? 'no-fan' : 'fan',
    explanation: `${howWords(air, off, closed)} it is ${rangedWords(value, 'ppm', 0)} ${whenWords(air)}, where at most ${decimals(limit, 0)} ppm is asked: ${marginWords(limit - value.value, 'ppm', 0)}. ${supplyWords(air)}${whenOff}${assumption}`,
  });
  return closed && !off ? unlessMissed(verdict, 'So the verdict is open.') : verdict;
}

function howWords(air: AirResult, off: boolean, closed: boolean): string {
  if (air.takes?.fanInTake === 'off' && air.fanOn !== null && !off) return 'With the fan off in every take';
  if (!off && air.fanOn !== null) return `With the fan at ${decimals(air.fanOn.flowM3PerS * 1000, 1)} L/s`;
  if (off && air.fanOn !== null) return 'With the fan off, as the session says,';
  return closed ? 'Taken as a closed box' : 'Without a fan, with nothing that renews the air,';
}

function whenWords({ takes, sessionMinutes }: AirResult): string {
  if (takes === null) return `after ${decimals(sessionMinutes, 0)} min`;
  const lasting =
    takes.repeatingPeakPpm === null ? '' : `, ${decimals(takes.repeatingPeakPpm, 0)} ppm when it goes on and on`;
  return `at the end of the last of ${takes.takes} takes of ${decimals(takes.takeMinutes, 0)} min${lasting}`;
}

function supplyWords({ supply, supplyPpm, startPpm }: AirResult): string {
  return supply.model === 'two-zones' && supply.roomEndPpm !== null
    ? `The room that it draws on goes from ${decimals(startPpm, 0)} to ${decimals(supply.roomEndPpm, 0)} ppm meanwhile.`
    : `The supply air brings ${decimals(supplyPpm, 0)} ppm.`;
}

function offWords(limit: number, minutes: readonly number[], ppm: readonly number[]): string {
  const index = ppm.findIndex((value) => value > limit);
  if (index < 0) return 'not within the session';
  if (index === 0) return 'at once';
  // Without flow the rise is a straight line, so two points give the time.
  const [before, after] = [ppm[index - 1] as number, ppm[index] as number];
  const [from, to] = [minutes[index - 1] as number, minutes[index] as number];
  return `after ${decimals(from + ((limit - before) / (after - before)) * (to - from), 0)} min`;
}
