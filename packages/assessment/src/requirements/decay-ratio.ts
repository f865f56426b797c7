import type { Requirement } from '@boothwright/language';
import { bandIndexOf } from '../bands/grid.js';
import type { AssessedBooth } from '../booth/assess-booth.js';
import type { RequirementResult } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { hertz } from '../text/hertz.js';
import { judged, notAssessed } from './verdict.js';

/** Decay at a band over the mean of 500 Hz to 2 kHz against a limit. */
export function judgeDecayRatio(
  requirement: Extract<Requirement, { kind: 'decay-ratio' }>,
  { booth, result: { roomSound } }: AssessedBooth,
): RequirementResult {
  const base = { requirement, booth: booth.name, unit: '', limit: requirement.limit.value };
  const hz = requirement.atHz.value;
  const decay = roomSound?.decay[bandIndexOf(hz)];
  const mid = roomSound?.mid ?? null;
  if (decay === undefined || decay.seconds === null || mid === null) {
    const explanation =
      roomSound === null
        ? 'A face of the booth is open, so there is no decay.'
        : `There is no decay to judge ${decay?.seconds === null ? `at ${hertz(hz)}: no mode of the booth lies near` : 'in the middle bands'}.`;
    return notAssessed({ ...base, explanation });
  }
  const ratio = decay.seconds / mid.seconds;
  const value = {
    value: ratio,
    low: (decay.lowS ?? decay.seconds) / mid.highS,
    high: (decay.highS ?? decay.seconds) / mid.lowS,
    basis: 'decay of both, each with its range; docs/models/sound-in-the-booth.md',
  };
  const explanation = `At ${hertz(hz)} the decay is ${decimals(decay.seconds, 2)} s, ${decimals(ratio, 1)} times the ${decimals(mid.seconds, 2)} s of 500 Hz to 2 kHz, where at most ${decimals(requirement.limit.value, 1)} times is asked.`;
  return judged({ ...base, value, sense: 'at-most', explanation });
}
