import type { RequirementResult } from '../result/result-document.js';
import { hertz } from '../text/hertz.js';
import { joined } from '../text/joined.js';
import { unlessMissed } from './verdict.js';

/** A-weighting takes 16 dB and more off up to here, Hz: an unknown octave there leaves an A-weighted verdict standing. */
export const hardlyAudibleBelowHz = 125;

/**
 * Withdraws a met verdict when an octave that counts is unknown. In an A-weighted figure the lowest octaves hardly count:
 * there the sentence only says on which side the figure errs.
 */
export function unlessBandsUnknown(
  verdict: RequirementResult,
  unknownOctaves: readonly number[],
  {
    aWeighted,
    who,
    bound,
  }: { readonly aWeighted: boolean; readonly who: string; readonly bound: 'a lower' | 'an upper' },
): RequirementResult {
  if (unknownOctaves.length === 0) return verdict;
  const bands = joined(unknownOctaves.map(hertz));
  if (aWeighted && unknownOctaves.every((hz) => hz <= hardlyAudibleBelowHz)) {
    return {
      ...verdict,
      explanation: `${verdict.explanation} ${who} known at ${bands}, so the figure is ${bound} bound.`,
    };
  }
  const open = unlessMissed(
    verdict,
    `But ${who.charAt(0).toLowerCase()}${who.slice(1)} known at ${bands}, so the verdict is open.`,
  );
  return open === verdict && verdict.verdict === 'missed'
    ? { ...verdict, explanation: `${verdict.explanation} ${who} known at ${bands}.` }
    : open;
}
