import type { Finding, ResultDocument } from '@boothwright/assessment';
import { printable } from '../printable.js';
import { joinLines, section } from '../section.js';
import { paint, type TextStyle } from '../text-style.js';
import { wrapText } from '../wrap-text.js';

const order = { error: 0, warning: 1, information: 2 } as const;
const colours = { error: 'red', warning: 'yellow', information: 'blue' } as const;

/** Design findings, grave ones first: what, why, what to do, on what it rests. */
export function findingsSection(result: ResultDocument, style: TextStyle): string | undefined {
  const findings = result.findings.toSorted((a, b) => order[a.severity] - order[b.severity]);
  if (style.detail === 'short') return otherFindings(findings, style);
  return section('Findings', findings.map((finding) => findingText(finding, style)).join('\n'), style);
}

function findingText(finding: Finding, style: TextStyle): string {
  const line = (label: string, text: string) =>
    text && wrapText(printable(`${label}${text}`), style.width, '      ', '      ');
  return joinLines(
    wrapText(
      `${paint(finding.severity, colours[finding.severity], style)}[${finding.id}] ${printable(finding.message)}`,
      style.width,
      '  ',
      '      ',
    ),
    line('', finding.explanation),
    line('Fix: ', finding.fix),
    finding.source && paint(line('Rests on: ', finding.source), 'dim', style),
  );
}

/** The grave ones stand under what to change first; what is left is good to know. */
function otherFindings(findings: readonly Finding[], style: TextStyle): string | undefined {
  const others = findings.filter(({ severity, fix }) => severity === 'information' || fix === '');
  return section(
    'Good to know',
    others.map(({ message }) => wrapText(printable(message), style.width, '  - ', '    ')).join('\n'),
    style,
  );
}
