import type { DefaultUsed, ResultDocument } from '@boothwright/assessment';
import { defaults } from '@boothwright/language';
import { evidenceText } from '../../hover/evidence-text.js';
import { defaultText } from '../../numbers/default-text.js';
import { printable } from '../printable.js';
import { joinLines, section } from '../section.js';
import type { TextStyle } from '../text-style.js';
import { wrapText } from '../wrap-text.js';

/** Defaults of the language: a line of the text takes their place. */
const stateable: ReadonlySet<string> = new Set(defaults.map(({ name }) => name));

/** Every default that entered, once, with what it rests on. */
export function defaultsSection(result: ResultDocument, style: TextStyle): string | undefined {
  const unique = new Map<string, DefaultUsed>();
  for (const used of result.defaults) unique.set(`${used.name} ${used.value}`, used);
  if (style.detail === 'short') {
    // What the writer can state instead comes by name; what the models take for granted is counted.
    const settable = [...unique.values()].filter(({ name }) => stateable.has(name));
    const others = unique.size - settable.length;
    const all = settable.map((used) => printable(`${used.name} ${defaultText(used)}`)).join('; ');
    return section(
      'Assumed where the text is silent',
      joinLines(
        all && wrapText(all, style.width, '  ', '  '),
        others > 0 &&
          wrapText(
            `and ${others} ${others === 1 ? 'figure' : 'figures'} that the models take for granted: \`--full\` names them and what they rest on`,
            style.width,
            '  ',
            '  ',
          ),
      ),
      style,
    );
  }
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

/** The short report names the gravest; the full one has the rest. */
const mostLeftOut = 3;

/** What the prediction does not know. */
export function leavesOutSection(result: ResultDocument, style: TextStyle): string | undefined {
  const shown = style.detail === 'full' ? result.leavesOut : result.leavesOut.slice(0, mostLeftOut);
  const more = result.leavesOut.length - shown.length;
  return section(
    'What this leaves out',
    joinLines(
      ...shown.map((sentence) => wrapText(printable(sentence), style.width, '  - ', '    ')),
      more > 0 && `  - and ${more} more`,
    ),
    style,
  );
}
