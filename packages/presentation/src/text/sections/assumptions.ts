import type { DefaultUsed, ResultDocument } from '@boothwright/assessment';
import { evidenceText } from '../../hover/evidence-text.js';
import { defaultText } from '../../numbers/default-text.js';
import { printable } from '../printable.js';
import { section } from '../section.js';
import type { TextStyle } from '../text-style.js';
import { wrapText } from '../wrap-text.js';

/** Every default that entered, once, with what it rests on. */
export function defaultsSection(result: ResultDocument, style: TextStyle): string | undefined {
  const unique = new Map<string, DefaultUsed>();
  for (const used of result.defaults) unique.set(`${used.name} ${used.value}`, used);
  const lines = [...unique.values()].map((used) =>
    wrapText(
      printable(`${used.name}: ${defaultText(used)} (${evidenceText(used.evidence)}: ${used.source})`),
      style.width,
      '  - ',
      '    ',
    ),
  );
  return section('Assumed where the text is silent', lines.join('\n'), style);
}

/** What the prediction does not know. */
export function leavesOutSection(result: ResultDocument, style: TextStyle): string | undefined {
  return section(
    'What this leaves out',
    result.leavesOut.map((sentence) => wrapText(printable(sentence), style.width, '  - ', '    ')).join('\n'),
    style,
  );
}
