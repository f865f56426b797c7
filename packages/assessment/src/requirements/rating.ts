import type { Requirement } from '@boothwright/language';
import { ratingsOf } from '../assembly/ratings.js';
import type { AssemblyResult, RequirementResult } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { marginWords, rangedWords } from './sentences.js';
import { judged } from './verdict.js';

/** STC or Rw of an assembly at its reference size. */
export function judgeRating(
  requirement: Extract<Requirement, { kind: 'rating' }>,
  assembly: AssemblyResult,
): RequirementResult {
  const { rating } = requirement;
  const limit = requirement.limit.value;
  const name = rating === 'stc' ? 'STC' : 'Rw';
  const value = {
    value: assembly.ratings[rating],
    low: ratingsOf(assembly.transmissionLossLowDb)[rating],
    high: ratingsOf(assembly.transmissionLossHighDb)[rating],
    basis: 'ratings of the lower and the upper end of the curve; docs/models/uncertainty.md',
  };
  const { widthM, heightM } = assembly.panel;
  return judged({
    requirement,
    value,
    limit,
    unit: rating === 'stc' ? 'STC' : 'dB',
    sense: 'at-least',
    explanation: `${requirement.assembly.name} is predicted at ${name} ${rangedWords(value, '', 0).replace(/ +/g, ' ').trim()} where at least ${decimals(limit, 0)} is asked: ${marginWords(value.value - limit, 'points', 0, 'short')}. It holds for a panel of ${decimals(widthM, 1)} m x ${decimals(heightM, 1)} m without leaks; the booth as a whole is lower.`,
  });
}
