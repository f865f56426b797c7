import type { ComparisonDocument } from '@boothwright/assessment';
import { displayWidth } from '../text/display-width.js';
import { printable } from '../text/printable.js';
import { joinLines, section } from '../text/section.js';
import { paint, type TextStyle } from '../text/text-style.js';
import { type Column, textTable } from '../text/text-table.js';
import { wrapText } from '../text/wrap-text.js';
import {
  type ComparisonPart,
  comparisonHeadline,
  comparisonParts,
  keptBackWords,
  sideName,
} from './comparison-parts.js';

/** A comparison for a terminal: the answer, then verdicts, what changed and what it does, the largest first. */
export function renderComparisonText(comparison: ComparisonDocument, style: TextStyle): string {
  const isLost = comparison.requirements.some(({ turn }) => turn === 'lost');
  const head = joinLines(
    `old: ${printable(sideName(comparison.old))}`,
    `new: ${printable(sideName(comparison.new))}`,
    wrapText(comparisonHeadline(comparison), style.width)
      .split('\n')
      .map((line) => paint(line, isLost ? 'red' : 'bold', style))
      .join('\n'),
  );
  const parts = comparisonParts(comparison, style.detail === 'full').map((part) => partText(part, style));
  return `${[head, ...parts].filter(Boolean).join('\n\n')}\n`;
}

function partText(part: ComparisonPart, style: TextStyle): string | undefined {
  if ('lines' in part)
    return section(
      part.heading,
      part.lines.map((line) => wrapText(printable(line), style.width, '  - ', '    ')).join('\n'),
      style,
    );
  const rows = part.rows.map((row) => row.map(printable));
  return section(
    part.heading,
    joinLines(
      rows.length > 0 && fitted(part.head, rows, style.width),
      part.keptBack && wrapText(keptBackWords(part.keptBack) ?? '', style.width, '  '),
    ),
    style,
  );
}

/** A table within the width; where its rows do not fit, each becomes a line of its own that wraps. */
function fitted(head: readonly string[], rows: readonly (readonly string[])[], width: number): string {
  const columns = head.map(
    (name): Column => ({ head: name, align: name === 'old' || name === 'new' || name === 'change' ? 'right' : 'left' }),
  );
  const table = textTable(columns, rows);
  if (table.split('\n').every((line) => displayWidth(line) <= width)) return table;
  const [old, now] = [head.indexOf('old'), head.indexOf('new')];
  return rows
    .map((row) => {
      const before = row.slice(0, old).filter(Boolean).join(' ');
      const after = row
        .slice(now + 1)
        .filter(Boolean)
        .join(', ');
      return wrapText(
        `${before}: ${row[old]} -> ${row[now]}${after === '' ? '' : `, ${after}`}`,
        width,
        '  - ',
        '    ',
      );
    })
    .join('\n');
}
