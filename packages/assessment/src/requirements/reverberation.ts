import { thirdOctaveBands } from '@boothwright/acoustics';
import type { Requirement } from '@boothwright/language';
import { bandSpan } from '../bands/band-names.js';
import { bandIndexOf, nominalHz } from '../bands/grid.js';
import type { AssessedBooth } from '../booth/assess-booth.js';
import { openFaces } from '../booth/geometry.js';
import type { Ranged, RequirementResult } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { hertz } from '../text/hertz.js';
import { joined } from '../text/joined.js';
import { judged, notAssessed } from './verdict.js';

/**
 * Decay against one or two limits in every asked band: of the damped modes below the Schroeder frequency, of the field above
 * it. Bands without a mode and an open face have no time: they leave the verdict open, unless a band that can be judged
 * misses.
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
  const base = { requirement, booth: booth.name, unit: 's' };
  let worst: { band: number; time: number; margin: number; sense: 'at-most' | 'at-least'; limit: number } | undefined;
  const unknown: number[] = [];
  for (let band = first; band <= last; band += 1) {
    const time = result.roomSound?.decay[band]?.seconds ?? null;
    if (time === null) {
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
  const beyond = [
    ...(fromHz !== undefined && bandIndexOf(fromHz.value) < 0 ? [fromHz.value] : []),
    ...(toHz !== undefined && bandIndexOf(toHz.value) >= thirdOctaveBands.length ? [toHz.value] : []),
  ];
  const validity = whyUnknown(booth, unknown, beyond);
  if (worst === undefined) {
    return notAssessed({ ...base, limit: max.value, explanation: validity });
  }
  const decay = result.roomSound?.decay[worst.band];
  const value: Ranged = {
    value: worst.time,
    low: decay?.lowS ?? worst.time,
    high: decay?.highS ?? worst.time,
    basis: `${basisOf[decay?.method ?? 'none']}; docs/models/sound-in-the-booth.md`,
  };
  const words = `At ${hertz(nominalHz[worst.band] as number)} the reverberation time is ${decimals(worst.time, 2)} s (${decimals(value.low, 2)} to ${decimals(value.high, 2)}), by ${methodWords[decay?.method ?? 'none']}, where ${worst.sense === 'at-most' ? 'at most' : 'at least'} ${decimals(worst.limit, 2)} s is asked: ${worst.margin >= 0 ? 'met' : 'missed'} by ${decimals(Math.abs(worst.margin), 2)} s in the tightest third octave.`;
  const result_ = judged({ ...base, value, limit: worst.limit, sense: worst.sense, explanation: words });
  if (unknown.length === 0 && beyond.length === 0) return result_;
  const open = `${unknown.length === 0 ? '' : `${unknownWords(unknown)} cannot be judged. `}${validity}`;
  if (result_.verdict === 'missed') return { ...result_, explanation: `${words} ${open}` };
  return notAssessed({
    ...base,
    limit: max.value,
    value,
    explanation: `${words} But not all of it can be judged: ${open}`,
  });
}

const methodWords = {
  modes: 'the damped modes of the booth',
  statistical: 'the statistics of the field',
  both: 'modes and statistics together',
  dry: 'what few reflections are left',
  none: 'no model',
} as const;

const basisOf = {
  modes: 'damped modes from mouth to microphone, with the admittance of each face; corners for the range',
  statistical: 'Eyring',
  both: 'damped modes and Eyring, near the Schroeder frequency',
  dry: 'between an evenly mixed field and none at all',
  none: 'no model',
} as const;

/** `250 Hz`, `250 Hz to 500 Hz`, and the two ends where a part in between is known. */
function unknownWords(unknown: readonly number[]): string {
  const runs: [number, number][] = [];
  for (const hz of unknown) {
    const run = runs.at(-1);
    if (run !== undefined && nominalHz.indexOf(hz) === nominalHz.indexOf(run[1]) + 1) run[1] = hz;
    else runs.push([hz, hz]);
  }
  return joined(runs.map(([first, last]) => bandSpan(first, last)));
}

function whyUnknown(booth: AssessedBooth['booth'], unknown: readonly number[], beyond: readonly number[]): string {
  const open = openFaces(booth);
  if (open.length > 0) {
    return `No build-up is given for ${joined(open)}: sound that leaves an open face does not come back, so there is no reverberation time.`;
  }
  const reasons = [
    ...(beyond.length > 0 ? [`${joined(beyond.map(hertz))} lies outside the bands from 50 Hz to 5 kHz.`] : []),
    ...(unknown.length > 0
      ? ['No mode of the booth lies near these bands, so that nothing rings there and there is no time to judge.']
      : []),
  ];
  return reasons.join(' ');
}
