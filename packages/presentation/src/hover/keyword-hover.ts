import type { DefaultEntry, Fact } from '@boothwright/language';
import { evidenceText } from './evidence-text.js';
import { code, escapeMarkdown, paragraphs } from './markdown.js';

/** What a word of the language means, an example, and what is assumed when the line is left out. */
export function keywordHover(fact: Fact, defaults: readonly DefaultEntry[] = []): string {
  const assumed = defaults.find(({ name }) => name === fact.default);
  return paragraphs(
    `**${escapeMarkdown(fact.keyword)}** ${escapeMarkdown(fact.documentation)}`,
    `\`\`\`booth\n${fact.example}\n\`\`\``,
    assumed && `Left out: ${code(assumed.text)} (${evidenceText(assumed.evidence)}: ${escapeMarkdown(assumed.source)})`,
    fact.required && 'The block is incomplete without it.',
  );
}
