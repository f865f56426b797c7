import type { AllowanceResult, ResultDocument } from '@boothwright/assessment';
import { printable } from '../printable.js';
import { joinLines, section } from '../section.js';
import type { TextStyle } from '../text-style.js';
import { wrapText } from '../wrap-text.js';

/**
 * What comments in the text allow: hazards and findings that are told nowhere else, so each stands here with its reason;
 * and the comments that have no effect.
 */
export function allowancesSection(result: ResultDocument, style: TextStyle): string | undefined {
  return section(
    'Allowed by a comment in the text',
    joinLines(...result.allowances.map((allowance) => allowanceText(allowance, style))),
    style,
  );
}

function allowanceText({ id, state, told, reason, note }: AllowanceResult, style: TextStyle): string {
  const words = state === 'allowed' ? `${id}: ${told.join('; ')} (${reason})` : `no effect: ${note}`;
  return wrapText(printable(words), style.width, '  - ', '    ');
}
