import {
  highestNoiseCriterion,
  lowestNoiseCriterion,
  noiseCriterion,
  noiseCriterionCurve,
  octaveBands,
  thirdLevelsToOctaves,
  thirdsOfOctave,
} from '@boothwright/acoustics';
import type { Requirement } from '@boothwright/language';
import type { AssessedBooth } from '../booth/assess-booth.js';
import { limitingPath, limitingSentence } from '../noise/governing.js';
import { shifted } from '../noise/level-totals.js';
import type { Ranged, RequirementResult } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { hertz } from '../text/hertz.js';
import { marginWords } from './sentences.js';
import { judged, notAssessed } from './verdict.js';

/** Whether a criterion has a curve: they are published from NC 15 to NC 70. */
export function hasCriterionCurve(criterion: number): boolean {
  return criterion >= lowestNoiseCriterion && criterion <= highestNoiseCriterion;
}

/**
 * Noise inside against a criterion, octave by octave. Below the lowest curve a limit can be missed, by passing that curve,
 * but not be met; above the highest there is no verdict.
 */
export function judgeCriterion(
  requirement: Extract<Requirement, { kind: 'room-tone' }>,
  assessed: AssessedBooth,
): RequirementResult {
  const limit = requirement.limit.value.decibels;
  const { result, booth, totalHalfWidth } = assessed;
  const base = { requirement, booth: booth.name, limit, unit: 'NC' };
  const levels = result.noise.total.byBand;
  const value = criterionValue(assessed);
  const published = `The curves are published from NC ${lowestNoiseCriterion} to NC ${highestNoiseCriterion}`;
  if (!(limit <= highestNoiseCriterion)) {
    return notAssessed({ ...base, value, explanation: `${published}, so there is none for NC ${decimals(limit, 0)}.` });
  }
  const tested = Math.max(limit, lowestNoiseCriterion);
  const worst = worstOctave(thirdLevelsToOctaves(levels), noiseCriterionCurve(tested));
  if (worst === null) return notAssessed({ ...base, explanation: 'No octave of the noise inside is known.' });
  if (limit < lowestNoiseCriterion && worst.margin >= 0) {
    return notAssessed({
      ...base,
      value,
      explanation: `${published}: the noise inside keeps to NC ${lowestNoiseCriterion}, and whether it would keep to NC ${decimals(limit, 0)} cannot be said.`,
    });
  }
  const limiting = limitingPath(assessed, loudestThird(levels, worst.octave));
  const criterion = result.noise.total.nc;
  const below =
    tested === limit ? '' : ` ${published}; what passes the lowest of them passes NC ${decimals(limit, 0)} too.`;
  const explanation = `${criterion === null ? 'The noise inside' : `The noise inside is ${criterion.text}`}; at ${hertz(octaveBands[worst.octave]?.nominal ?? 0)} it is ${decimals(worst.level, 1)} dB where NC ${decimals(tested, 0)} allows ${decimals(worst.allowed, 0)} dB: ${marginWords(worst.margin, 'dB')} in the worst octave.${below}${limitingSentence(limiting)}`;
  return {
    ...(value === null
      ? notAssessed({ ...base, explanation })
      : judged({ ...base, value, sense: 'at-most', explanation })),
    verdict: worst.margin >= 0 ? 'met' : 'missed',
    withinRange:
      Math.abs(worst.margin) < Math.max(...thirdsOfOctave(worst.octave).map((third) => totalHalfWidth[third] ?? 0)),
    limitedBy: limiting?.id ?? null,
  };
}

interface WorstOctave {
  readonly octave: number;
  readonly level: number;
  readonly allowed: number;
  readonly margin: number;
}

function worstOctave(octaves: readonly (number | null)[], curve: readonly number[]): WorstOctave | null {
  const known = octaves.flatMap((level, octave) => {
    const allowed = curve[octave] as number;
    return level === null ? [] : [{ octave, level, allowed, margin: allowed - level }];
  });
  return known.reduce<WorstOctave | null>(
    (best, each) => (best === null || each.margin < best.margin ? each : best),
    null,
  );
}

function criterionValue({ result, totalHalfWidth }: AssessedBooth): Ranged | null {
  const levels = result.noise.total.byBand;
  const criterion = result.noise.total.nc;
  const low = criterionNumber(thirdLevelsToOctaves(shifted(levels, totalHalfWidth, -1)));
  const high = criterionNumber(thirdLevelsToOctaves(shifted(levels, totalHalfWidth, 1)));
  if (criterion === null || low === null || high === null) return null;
  return {
    value: criterion.value ?? outsideCurves(criterion.text),
    low,
    high,
    basis: `${criterion.text}; 15 and 70 stand for "below NC 15" and "above NC 70"; docs/models/noise-inside.md`,
  };
}

function criterionNumber(octaves: readonly (number | null)[]): number | null {
  if (octaves.some((level) => level === null)) return null;
  const { value, text } = noiseCriterion(octaves as number[]);
  return value ?? outsideCurves(text);
}

/** The nearest printed curve, where the spectrum lies below or above all of them. */
function outsideCurves(text: string): number {
  return text.startsWith('below') ? lowestNoiseCriterion : highestNoiseCriterion;
}

function loudestThird(levels: readonly (number | null)[], octave: number): number {
  const thirds = thirdsOfOctave(octave);
  return thirds.reduce(
    (best, third) => ((levels[third] ?? -999) > (levels[best] ?? -999) ? third : best),
    thirds[0] as number,
  );
}
