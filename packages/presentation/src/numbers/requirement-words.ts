import type { RequirementResult } from '@boothwright/assessment';
import { decimalsToTell, formatDifference, formatQuantity, formatRange } from './format-quantity.js';

/** The requirement as written, without its first word. */
export function requirementName(requirement: RequirementResult): string {
  return requirement.text.replace(/^require\s+/, '');
}

/** `missed by 7 dB`, `met with 3 dB to spare`, `met exactly`, `not assessed`. */
export function verdictText(requirement: RequirementResult): string {
  const { verdict, margin, unit } = requirement;
  if (verdict === 'not-assessed') return 'not assessed';
  if (margin === null) return verdict;
  if (verdict === 'missed')
    return `missed by ${requirement.atLeast ? 'at least ' : ''}${formatDifference(margin, unit)}`;
  return margin === 0 ? 'met exactly' : `met with ${formatDifference(margin, unit)} to spare`;
}

/** The predicted figure, with a decimal more where it would otherwise look equal to the limit; `≥` before a lower bound. */
export function valueText(requirement: RequirementResult): string {
  const { value, limit, unit, atLeast } = requirement;
  if (!value) return '–';
  return `${atLeast ? '≥ ' : ''}${formatQuantity(value.value, unit, decimalsToTell(value.value, limit, unit))}`;
}

/** `17 to 22`; undefined where the range is a single figure. */
export function rangeText(requirement: RequirementResult): string | undefined {
  const { value, limit, unit } = requirement;
  if (!value || value.low === value.high) return undefined;
  return formatRange(value.low, value.high, unit, decimalsToTell(value.value, limit, unit));
}

export function limitText(requirement: RequirementResult): string {
  const { value, limit, unit } = requirement;
  return formatQuantity(limit, unit, value ? decimalsToTell(value.value, limit, unit) : 0);
}
