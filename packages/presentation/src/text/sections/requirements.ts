import type { RequirementResult, ResultDocument } from '@boothwright/assessment';
import { formatDifference } from '../../numbers/format-quantity.js';
import { limiterWords } from '../../numbers/path-words.js';
import { limitText, rangeText, requirementName, valueText, verdictText } from '../../numbers/requirement-words.js';
import { displayWidth } from '../display-width.js';
import { printable } from '../printable.js';
import { joinLines, ofBooth, section } from '../section.js';
import { paint, type TextStyle } from '../text-style.js';
import { type Column, textTable } from '../text-table.js';
import { wrapText } from '../wrap-text.js';

const words = { met: 'met', missed: 'MISSED', 'not-assessed': 'not assessed' } as const;
const colours = { met: 'green', missed: 'red', 'not-assessed': 'yellow' } as const;

/** Every requirement in the order of the text, then why each one that is not met is not. */
export function requirementsSection(result: ResultDocument, style: TextStyle): string | undefined {
  const { requirements } = result;
  const booths = Object.keys(result.booths).length;
  const rows = requirements.map((requirement) => [
    paint(words[requirement.verdict], colours[requirement.verdict], style),
    printable(requirementName(requirement)) + (requirement.booth ? ofBooth(requirement.booth, booths) : ''),
    valueText(requirement),
    rangeText(requirement) ?? '',
    limitText(requirement),
    marginText(requirement),
    requirement.limitedBy === null ? '' : printable(limiterWords(requirement.limitedBy)),
  ]);
  const why = requirements.filter(({ verdict }) => verdict !== 'met');
  const close = requirements.some(({ withinRange }) => withinRange);
  return section(
    'Requirements',
    requirements.length > 0
      ? joinLines(
          fittingTable(rows, style.width),
          close &&
            wrapText(
              '~ the limit lies within the range of the prediction: less certain than the rest',
              style.width,
              '  ',
              '    ',
            ),
          ...sharedReasons(why).map((group) => whyText(group, style)),
        )
      : undefined,
    style,
  );
}

const columns: readonly Column[] = [
  { head: '' },
  { head: 'requirement' },
  { head: 'predicted', align: 'right' },
  { head: 'range', align: 'right' },
  { head: 'limit', align: 'right' },
  { head: 'margin', align: 'right' },
  { head: 'limited by' },
];
const nameColumn = 1;
/** The limit stands in the requirement itself, so its column goes first where the width does not suffice. */
const limitColumn = 4;
const limitedByColumn = 6;
/** Down to this the end of a requirement gives way before the column of what limits it does, then to the shortest. */
const readableName = 28;
const shortestName = 22;

/** Gives way in this order: the column of limits, the end of long requirements, the column of what limits. */
function fittingTable(rows: readonly (readonly string[])[], width: number): string {
  const without = (...dropped: readonly number[]) =>
    columns.map((_, index) => index).filter((i) => !dropped.includes(i));
  const draw = (shown: readonly number[], longestName: number) =>
    textTable(
      shown.map((index) => columns[index]!),
      rows.map((row) =>
        shown.map((index) => (index === nameColumn ? shortened(row[index] ?? '', longestName) : (row[index] ?? ''))),
      ),
    );
  const fits = (table: string) => table.split('\n').every((line) => displayWidth(line) <= width);
  const longest = Math.max(shortestName, ...rows.map((row) => displayWidth(row[nameColumn] ?? '')));
  const whole = draw(without(), longest);
  if (fits(whole)) return whole;
  const ways = [
    { dropped: [limitColumn], least: readableName },
    { dropped: [limitColumn, limitedByColumn], least: shortestName },
  ];
  for (const { dropped, least } of ways) {
    for (let length = longest; length >= Math.min(longest, least); length--) {
      const table = draw(without(...dropped), length);
      if (fits(table)) return table;
    }
  }
  return draw(without(limitColumn, limitedByColumn), shortestName);
}

function shortened(name: string, length: number): string {
  return displayWidth(name) <= length
    ? name
    : `${[...name]
        .slice(0, length - 1)
        .join('')
        .trimEnd()}…`;
}

export function marginText(requirement: RequirementResult): string {
  const { margin, unit, verdict, withinRange } = requirement;
  if (margin === null || verdict === 'not-assessed') return '–';
  const sign = margin < 0 ? '-' : margin > 0 ? '+' : '';
  return `${withinRange ? '~' : ''}${sign}${formatDifference(margin, unit)}`;
}

/** Requirements that are open for one and the same reason stand together: it is said once. */
export function sharedReasons(requirements: readonly RequirementResult[]): RequirementResult[][] {
  const groups: RequirementResult[][] = [];
  for (const requirement of requirements) {
    const same = groups.find(
      ([first]) =>
        requirement.verdict === 'not-assessed' &&
        first?.verdict === 'not-assessed' &&
        first.explanation === requirement.explanation,
    );
    if (same === undefined) groups.push([requirement]);
    else same.push(requirement);
  }
  return groups;
}

function whyText(group: readonly RequirementResult[], style: TextStyle): string {
  const [first] = group as [RequirementResult];
  const names = group.length > 3 ? `all ${group.length} that depend on it` : group.map(requirementName).join(', ');
  const reason = first.explanation.replace(/\.$/, '');
  return wrapText(printable(`${names}: ${verdictText(first)}. ${reason}.`), style.width, '  - ', '    ');
}
