import type { BoothResult, RequirementResult } from '@boothwright/assessment';
import { limiterWords } from '../numbers/limiter-words.js';
import { limitText, rangeText, requirementName, valueText, verdictText } from '../numbers/requirement-words.js';
import { code, escapeMarkdown, paragraphs } from './markdown.js';

/**
 * Verdict, predicted figure with range, limit, what limits it and why. `booth` is the one the requirement speaks of, so
 * that what limits it can be named.
 */
export function requirementHover(requirement: RequirementResult, booth?: BoothResult): string {
  const range = rangeText(requirement);
  return paragraphs(
    `**${verdictText(requirement)}** ${code(requirementName(requirement))}`,
    requirement.value &&
      `Predicted ${valueText(requirement)}${range ? ` (range ${range}; ${escapeMarkdown(requirement.value.basis)})` : ''}, limit ${limitText(requirement)}`,
    requirement.withinRange &&
      'The limit lies within the range of the prediction: it may turn out either way. Measure before relying on it.',
    requirement.limitedBy && `Limited by ${escapeMarkdown(limiterWords(requirement.limitedBy, booth))}`,
    escapeMarkdown(requirement.explanation),
  );
}
