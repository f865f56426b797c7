import { thirdOctaveBands } from '@boothwright/acoustics';
import type { Requirement } from '@boothwright/language';
import { bandIndexOf, nominalHz } from '../bands/grid.js';
import type { AssessedBooth } from '../booth/assess-booth.js';
import type { Ranged, RequirementResult } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { hertz } from '../text/hertz.js';
import { reverberationShare } from '../uncertainty/model-uncertainty.js';
import { judged, notAssessed } from './verdict.js';

/**
 * Eyring's time against one or two limits in every asked band. Bands below the Schroeder frequency have no time: they
 * leave the verdict open, unless a band that can be judged misses.
 */
export function judgeReverberation(
  requirement: Extract<Requirement, { kind: 'reverberation' }>,
  { booth, result }: AssessedBooth,
): RequirementResult {
  const { min, max, fromHz, toHz } = requirement;
  const first = Math.max(0, fromHz === undefined ? 0 : bandIndexOf(fromHz.value));
  const last = Math.min(
    thirdOctaveBands.length - 1,
    toHz === undefined ? thirdOctaveBands.length - 1 : bandIndexOf(toHz.value),
  );
  const { eyringS, validFromHz } = result.reverberation;
  const base = { requirement, booth: booth.name, unit: 's' };
  let worst: { band: number; time: number; margin: number; sense: 'at-most' | 'at-least'; limit: number } | undefined;
  const unknown: number[] = [];
  for (let band = first; band <= last; band += 1) {
    const time = eyringS[band];
    if (time === null || time === undefined) {
      unknown.push(nominalHz[band] as number);
      continue;
    }
    const candidates = [
      { band, time, margin: max.value - time, sense: 'at-most' as const, limit: max.value },
      ...(min === undefined
        ? []
        : [{ band, time, margin: time - min.value, sense: 'at-least' as const, limit: min.value }]),
    ];
    for (const candidate of candidates) if (worst === undefined || candidate.margin < worst.margin) worst = candidate;
  }
  const validity = `Below ${hertz(validFromHz)} a booth this small has single modes instead of a reverberation time, so no formula can answer there; measure the decay, or look at the list of modes.`;
  if (worst === undefined) {
    return notAssessed({ ...base, limit: max.value, explanation: validity });
  }
  const value: Ranged = {
    value: worst.time,
    low: worst.time * (1 - reverberationShare),
    high: worst.time * (1 + reverberationShare),
    basis: 'Eyring, a quarter of the value either way; docs/models/uncertainty.md',
  };
  const words = `At ${hertz(nominalHz[worst.band] as number)} the reverberation time is ${decimals(worst.time, 2)} s (${decimals(value.low, 2)} to ${decimals(value.high, 2)}), where ${worst.sense === 'at-most' ? 'at most' : 'at least'} ${decimals(worst.limit, 2)} s is asked: ${worst.margin >= 0 ? 'met' : 'missed'} by ${decimals(Math.abs(worst.margin), 2)} s in the tightest band.`;
  const result_ = judged({ ...base, value, limit: worst.limit, sense: worst.sense, explanation: words });
  if (unknown.length === 0) return result_;
  const open = `${hertz(unknown[0] as number)} to ${hertz(unknown.at(-1) as number)} cannot be judged. ${validity}`;
  if (result_.verdict === 'missed') return { ...result_, explanation: `${words} ${open}` };
  return notAssessed({ ...base, limit: max.value, value, explanation: `${words} But ${open}` });
}
