import type { RequirementResult } from '@boothwright/assessment';
import { valueText, verdictText } from '../numbers/requirement-words.js';

/** `missed by 7 dB: 42 dBA`, `met with 3 dB to spare: 32 dBA`, `not assessed`. */
export function requirementLabel(requirement: RequirementResult): string {
  const verdict = verdictText(requirement);
  return requirement.value ? `${verdict}: ${valueText(requirement)}` : verdict;
}
