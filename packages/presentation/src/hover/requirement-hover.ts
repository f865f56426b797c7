import type { RequirementResult } from '@boothwright/assessment';
import { limiterWords } from '../numbers/path-words.js';
import { limitText, rangeText, requirementName, valueText, verdictText } from '../numbers/requirement-words.js';
import { code, escapeMarkdown, paragraphs } from './markdown.js';

/** Verdict, predicted figure with range, limit, what limits it and why. */
export function requirementHover(requirement: RequirementResult): string {
  return paragraphs(requirementVerdict(requirement), requirementReasons(requirement));
}

/** The part that is read first: verdict, predicted figure with range, limit, and what limits it. */
export function requirementVerdict(requirement: RequirementResult): string {
  const range = rangeText(requirement);
  return paragraphs(
    `**${verdictText(requirement)}** ${code(requirementName(requirement))}${
      requirement.value
        ? `: predicted ${valueText(requirement)}${range ? ` (${range})` : ''}, limit ${limitText(requirement)}`
        : ''
    }`,
    requirement.withinRange &&
      'The limit lies within the range of the prediction: it may turn out either way. Measure before relying on it.',
    requirement.limitedBy && `Limited by ${escapeMarkdown(limiterWords(requirement.limitedBy))}`,
  );
}

/** Why it is so, and what the range rests on. */
export function requirementReasons(requirement: RequirementResult): string {
  return paragraphs(
    escapeMarkdown(requirement.explanation),
    requirement.value && rangeText(requirement) && `The range: ${escapeMarkdown(requirement.value.basis)}`,
  );
}
