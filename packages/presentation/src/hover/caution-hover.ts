import type { Caution } from '@boothwright/assessment';
import { escapeMarkdown, paragraphs } from './markdown.js';

/** A hazard, its number, why it is one and whom to ask. */
export function cautionHover({ hazard, number, why, ask, severity }: Caution): string {
  return paragraphs(
    `**${severity === 'stop' ? 'Stop' : severity === 'caution' ? 'Caution' : 'Note'}**: ${escapeMarkdown(hazard)}${number === null ? '' : ` (${escapeMarkdown(number)})`}`,
    escapeMarkdown(why),
    escapeMarkdown(ask),
  );
}
