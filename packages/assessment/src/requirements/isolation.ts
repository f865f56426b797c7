import type { Requirement } from '@boothwright/language';
import { unknownOctaves } from '../bands/band-names.js';
import type { AssessedBooth } from '../booth/assess-booth.js';
import { limitingOverall, limitingOverallSentence } from '../noise/limiting-overall.js';
import type { RequirementResult } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { marginWords, rangedWords } from './sentences.js';
import { unlessBandsUnknown } from './unless-bands-unknown.js';
import { judged, notAssessed } from './verdict.js';

/** A-weighted level outside less inside, for the spectrum of the named source. */
export function judgeIsolation(
  requirement: Extract<Requirement, { kind: 'isolation' }>,
  { booth, result }: AssessedBooth,
): RequirementResult {
  const limit = requirement.limit.value.decibels;
  const base = { requirement, booth: booth.name, limit, unit: 'dB' };
  const impact = result.noise.notPredicted.some((source) => source.name === requirement.against);
  if (impact) {
    return notAssessed({
      ...base,
      explanation: `${requirement.against} arrives through the structure, which is not predicted. Measure it inside after the build.`,
    });
  }
  const source = result.noise.bySource.find((candidate) => candidate.name === requirement.against);
  const value = source?.differenceDbA ?? null;
  if (source === undefined || value === null) {
    return notAssessed({
      ...base,
      explanation: `No level of ${requirement.against} is known, so there is no difference to form.`,
    });
  }
  const limiting = limitingOverall(booth, result.paths, [
    { source: source.name, levels: source.inside.byBand, shares: source.shares },
  ]);
  const verdict = judged({
    ...base,
    value,
    sense: 'at-least',
    limitedBy: limiting?.id ?? null,
    explanation: `Of ${source.name} the booth keeps out ${rangedWords(value, 'dB')} A-weighted where at least ${decimals(limit, 0)} dB is asked: ${marginWords(value.value - limit, 'dB', 1, 'short')}.${limitingOverallSentence(limiting, 'inside')}`,
  });
  return unlessBandsUnknown(verdict, unknownOctaves(source.outside.byBand), {
    aWeighted: true,
    who: `${source.name} is not`,
    bound: 'an upper',
  });
}
