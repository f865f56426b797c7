import { evidenceText } from './evidence-text.js';
import { code, escapeMarkdown, paragraphs } from './markdown.js';

export interface AssumedDefault {
  readonly name: string;
  /** As a user would write it. */
  readonly text: string;
  readonly evidence: string;
  readonly source: string;
}

/** What was assumed in place of a fact that the text does not give. */
export function defaultHover(assumed: AssumedDefault): string {
  return paragraphs(
    `Not given; assumed **${escapeMarkdown(assumed.text)}** (default ${code(assumed.name)})`,
    `Rests on: ${evidenceText(assumed.evidence)}. ${escapeMarkdown(assumed.source)}`,
    'Write the fact to replace it.',
  );
}
