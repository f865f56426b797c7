import {
  noiseCriterion,
  noiseCriterionCurve,
  octaveBands,
  thirdLevelsToOctaves,
  thirdsOfOctave,
} from '@boothwright/acoustics';
import type { Requirement } from '@boothwright/language';
import { exactHz } from '../bands/grid.js';
import type { AssessedBooth } from '../booth/assess-booth.js';
import { governingBand, limitingPath, limitingSentence } from '../noise/governing.js';
import { highPassAttenuation } from '../noise/high-pass.js';
import { rangedTotal, shifted } from '../noise/level-totals.js';
import type { Ranged, RequirementResult } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { hertz } from '../text/hertz.js';
import { joined } from '../text/joined.js';
import { marginWords, rangedWords } from './sentences.js';
import { judged, notAssessed, unlessMissed } from './verdict.js';

type RoomToneRequirement = Extract<Requirement, { kind: 'room-tone' }>;

/** Noise inside against a limit in dBA, dB, NC or dBFS. */
export function judgeRoomTone(requirement: RoomToneRequirement, assessed: AssessedBooth): RequirementResult {
  const limit = requirement.limit.value.decibels;
  const unit = unitOf(requirement);
  const { booth, result } = assessed;
  const none = (explanation: string) => notAssessed({ requirement, booth: booth.name, limit, unit, explanation });
  if (result.noise.bySource.length === 0 && result.noise.fan === null) {
    return none('The text names no airborne noise and no fan with a sound power, so there is nothing to predict.');
  }
  const verdict = judgedBy(requirement, assessed, limit, unit, none);
  return withWhatIsUnknown(requirement, verdict, assessed);
}

function unitOf(requirement: RoomToneRequirement): string {
  switch (requirement.limit.value.weighting) {
    case 'A':
      return 'dBA';
    case 'C':
      return 'dBC';
    case 'NC':
      return 'NC';
    case 'FS':
      return 'dBFS';
    default:
      return 'dB';
  }
}

function judgedBy(
  requirement: RoomToneRequirement,
  assessed: AssessedBooth,
  limit: number,
  unit: string,
  none: (explanation: string) => RequirementResult,
): RequirementResult {
  const { weighting } = requirement.limit.value;
  if (weighting === 'NC') return judgeCriterion(requirement, assessed, limit, none);
  if (weighting === 'FS') return judgeFullScale(requirement, assessed, limit, none);
  if (weighting === 'C') return none('Levels in dBC are not predicted; ask for dBA, dB or NC.');
  const kind = weighting === 'A' ? 'A' : 'Z';
  const { total } = assessed.result.noise;
  const value = kind === 'A' ? total.dBA : total.dBZ;
  if (value === null) return none('No band of the noise inside is known.');
  const band = governingBand(total.byBand, kind);
  const limiting = band === null ? null : limitingPath(assessed, band);
  return judged({
    requirement,
    booth: assessed.booth.name,
    value,
    limit,
    unit,
    sense: 'at-most',
    limitedBy: limiting?.id ?? null,
    explanation: `Inside it is ${rangedWords(value, unit)} where at most ${decimals(limit, 0)} ${unit} is asked: ${marginWords(limit - value.value, 'dB')}.${limitingSentence(limiting)}`,
  });
}

function judgeCriterion(
  requirement: RoomToneRequirement,
  assessed: AssessedBooth,
  limit: number,
  none: (explanation: string) => RequirementResult,
): RequirementResult {
  const { result, totalHalfWidth } = assessed;
  const levels = result.noise.total.byBand;
  const octaves = thirdLevelsToOctaves(levels);
  const curve = noiseCriterionCurve(limit);
  let worst: number | null = null;
  let worstMargin = Number.POSITIVE_INFINITY;
  octaves.forEach((level, octave) => {
    if (level === null) return;
    const margin = (curve[octave] as number) - level;
    if (margin < worstMargin) {
      worst = octave;
      worstMargin = margin;
    }
  });
  if (worst === null) return none('No octave of the noise inside is known.');
  const octave = worst as number;
  const criterion = result.noise.total.nc;
  const low = criterionNumber(thirdLevelsToOctaves(shifted(levels, totalHalfWidth, -1)));
  const high = criterionNumber(thirdLevelsToOctaves(shifted(levels, totalHalfWidth, 1)));
  const value: Ranged | null =
    criterion === null || low === null || high === null
      ? null
      : {
          value: criterion.value ?? outsideCurves(criterion.text),
          low,
          high,
          basis: `${criterion.text}; 15 and 70 stand for "below NC 15" and "above NC 70"; docs/models/noise-inside.md`,
        };
  const band = loudestThird(levels, octave);
  const limiting = limitingPath(assessed, band);
  const name = hertz(octaveBands[octave]?.nominal ?? 0);
  const level = octaves[octave] as number;
  const explanation = `${criterion === null ? 'The noise inside' : `The noise inside is ${criterion.text}`}; at ${name} it is ${decimals(level, 1)} dB where NC ${decimals(limit, 0)} allows ${decimals(curve[octave] as number, 0)} dB: ${marginWords(worstMargin, 'dB')} in the worst octave.${limitingSentence(limiting)}`;
  return {
    ...(value === null
      ? notAssessed({ requirement, booth: assessed.booth.name, limit, unit: 'NC', explanation })
      : judged({ requirement, booth: assessed.booth.name, value, limit, unit: 'NC', sense: 'at-most', explanation })),
    verdict: worstMargin >= 0 ? 'met' : 'missed',
    withinRange: Math.abs(worstMargin) < Math.max(...thirdsOfOctave(octave).map((third) => totalHalfWidth[third] ?? 0)),
    limitedBy: limiting?.id ?? null,
  };
}

function criterionNumber(octaves: readonly (number | null)[]): number | null {
  if (octaves.some((level) => level === null)) return null;
  const { value, text } = noiseCriterion(octaves as number[]);
  return value ?? outsideCurves(text);
}

/** The nearest printed curve, where the spectrum lies below or above all of them. */
function outsideCurves(text: string): number {
  return text.startsWith('below') ? 15 : 70;
}

function loudestThird(levels: readonly (number | null)[], octave: number): number {
  const thirds = thirdsOfOctave(octave);
  return thirds.reduce(
    (best, third) => ((levels[third] ?? -999) > (levels[best] ?? -999) ? third : best),
    thirds[0] as number,
  );
}

function judgeFullScale(
  requirement: RoomToneRequirement,
  assessed: AssessedBooth,
  limit: number,
  none: (explanation: string) => RequirementResult,
): RequirementResult {
  const { booth, result, totalHalfWidth } = assessed;
  if (booth.microphone === undefined)
    return none('The booth has no `mic` line, so the distance of the voice is not known.');
  const tone = result.noise.roomTone;
  if (tone === null) {
    return none(
      'There is no `session` block, or no band of the noise or of the voice is known, so the recording cannot be calibrated.',
    );
  }
  const cutoff = booth.microphone.highPass?.value;
  const filtered = result.noise.total.byBand.map((level, band) =>
    level === null || cutoff === undefined ? level : level - highPassAttenuation(exactHz[band] as number, cutoff),
  );
  const band = governingBand(filtered, 'Z');
  const limiting = band === null ? null : limitingPath(assessed, band);
  const total = rangedTotal(filtered, totalHalfWidth, 'Z', '');
  const own = total !== null && tone.noiseAtCapsuleDbZ - total.value > 3;
  return judged({
    requirement,
    booth: booth.name,
    value: tone.dBFS,
    limit,
    unit: 'dBFS',
    sense: 'at-most',
    limitedBy: own ? 'microphone' : (limiting?.id ?? null),
    explanation: `Room tone reads ${rangedWords(tone.dBFS, 'dBFS RMS')} where at most ${decimals(limit, 0)} dBFS is asked: ${marginWords(limit - tone.dBFS.value, 'dB')}. The voice at the capsule is ${decimals(tone.voiceAtCapsuleDbZ, 1)} dB and the noise ${decimals(tone.noiseAtCapsuleDbZ, 1)} dB, both unweighted.${own ? ' Most of the noise is the microphone itself.' : limitingSentence(limiting)}`,
  });
}

/** A-weighting takes 16 dB and more off up to here, Hz: an unknown octave there leaves a dBA verdict standing. */
const hardlyAudibleBelowHz = 125;

/** What could spoil a met verdict: fans and bands that are not known, and footfall, which is only mentioned. */
function withWhatIsUnknown(
  requirement: RoomToneRequirement,
  verdict: RequirementResult,
  assessed: AssessedBooth,
): RequirementResult {
  const { result, unknownFans } = assessed;
  let checked = verdict;
  if (unknownFans.length > 0) {
    const words =
      verdict.verdict === 'missed'
        ? `The fan of ${joined(unknownFans)} comes on top: its sound power is not given.`
        : `But the fan of ${joined(unknownFans)} has no sound power in the text, so its noise is unknown and the verdict is open.`;
    checked =
      verdict.verdict === 'missed'
        ? { ...verdict, explanation: `${verdict.explanation} ${words}` }
        : unlessMissed(verdict, words);
  }
  const unknown = assessed.unknownOctaves;
  if (unknown.length > 0) {
    const bands = joined(unknown.map(hertz));
    const hardlyCounts = requirement.limit.value.weighting === 'A' && unknown.every((hz) => hz <= hardlyAudibleBelowHz);
    checked = hardlyCounts
      ? {
          ...checked,
          explanation: `${checked.explanation} Not every source is known at ${bands}, so the figure is a lower bound.`,
        }
      : unlessMissed(checked, `But not every source is known at ${bands}, so the verdict is open.`);
  }
  if (result.noise.notPredicted.length > 0 && checked.verdict === 'met') {
    const names = joined(result.noise.notPredicted.map((source) => source.name));
    checked = {
      ...checked,
      explanation: `${checked.explanation} This holds for airborne sound only: ${names} arrives through the structure and is not predicted.`,
    };
  }
  return checked;
}
