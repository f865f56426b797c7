import { highestNoiseCriterion, lowestNoiseCriterion, noiseCriterionCurve } from '@boothwright/acoustics';
import type { RequirementResult } from '@boothwright/assessment';

/**
 * The band levels, by octave from 63 Hz, that a room-tone requirement in NC allows for a booth; undefined when there is
 * none or when it asks for a curve outside the printed family.
 */
export function targetCurve(
  requirements: readonly RequirementResult[],
  booth: string,
): { readonly label: string; readonly octaves: readonly number[] } | undefined {
  const limits = requirements
    .filter(({ kind, unit, booth: of }) => kind === 'room-tone' && unit === 'NC' && (of === null || of === booth))
    .map(({ limit }) => limit);
  if (limits.length === 0) return undefined;
  const tightest = Math.min(...limits);
  if (tightest < lowestNoiseCriterion || tightest > highestNoiseCriterion) return undefined;
  return { label: `NC ${tightest}`, octaves: noiseCriterionCurve(tightest) };
}
