import type { ComparisonDocument } from '@boothwright/assessment';
import { bullets, code, escapeMarkdown, paragraphs, textTable } from '../hover/markdown.js';
import { inlines } from '../report/inline.js';
import { printable } from '../text/printable.js';
import {
  type ComparisonPart,
  comparisonHeadline,
  comparisonParts,
  keptBackWords,
  sideName,
} from './comparison-parts.js';

/** Lines of one part that stand open in a comment; longer ones are folded. */
const openLines = 12;

/** A comparison as a comment of a review. */
export function renderComparisonMarkdown(comparison: ComparisonDocument): string {
  const sides = [comparison.old, comparison.new].map((side) => code(printable(sideName(side))));
  return `${paragraphs(
    `**${escapeMarkdown(comparisonHeadline(comparison))}** ${sides.join(' → ')}`,
    ...comparisonParts(comparison, false).map(partMarkdown),
  )}\n`;
}

/** What stands between backticks is code. */
function shown(words: string): string {
  return inlines(words)
    .map(({ text, code: isCode }) => (isCode ? code(text) : escapeMarkdown(text)))
    .join('');
}

function partMarkdown(part: ComparisonPart): string {
  const count = 'rows' in part ? part.rows.length : part.lines.length;
  const body =
    'rows' in part
      ? paragraphs(
          part.rows.length > 0 &&
            textTable(
              part.head,
              part.rows.map((row) => row.map(shown)),
            ),
          keptBackWords(part.keptBack),
        )
      : bullets(part.lines.map(shown));
  if (count <= openLines) return paragraphs(`### ${part.heading}`, body);
  return paragraphs(`<details><summary>${part.heading} (${count})</summary>`, body, '</details>');
}
