import type { ComparisonDocument, FactChange, Finding, TextRange } from '@boothwright/assessment';
import { type ComparisonPart, comparisonHeadline, comparisonParts, factLine } from '../../compare/comparison-parts.js';
import { html, markButton, pointsHtml, type SheetColumn, tableHtml, wordsHtml } from '../sheet-html.js';
import { type Marks, newMarks, type SheetSection } from '../sheet-section.js';

/** What changed since the last commit and what that does, verdicts first, then the largest effects. */
export function sinceSection(comparison: ComparisonDocument): SheetSection {
  const marks = newMarks();
  return {
    id: 'since',
    title: 'Since the last commit',
    summary: comparisonHeadline(comparison).replace(/\.$/, ''),
    html: comparisonParts(comparison, false)
      .map((part) => partHtml(part, comparison, marks))
      .join(''),
    marks: marks.ranges,
  };
}

function partHtml(part: ComparisonPart, { facts, findings }: ComparisonDocument, marks: Marks): string {
  const heading = `<h3>${html(part.heading)}</h3>`;
  if ('rows' in part) {
    const columns = part.head.map((head): SheetColumn => (figureHeads.has(head) ? { head, figure: true } : { head }));
    // The first cell names the row: a verdict's word stands behind what it is about.
    const [order, rows] = part.head[1] === 'requirement' ? [[1, 0, 2, 3, 4], part.rows] : [undefined, part.rows];
    const turned = <T>(cells: readonly T[]) => order?.map((at) => cells[at] as T) ?? cells;
    const table = tableHtml({ caption: part.heading, columns: turned(columns), rows: rows.map(turned) });
    return (rows.length === 0 ? '' : heading + table) + pointsHtml([part.keptBack]);
  }
  const led = (words: string, range: TextRange | null) =>
    `<li>${range === null ? wordsHtml(words) : markButton(marks.of(range), wordsHtml(words))}</li>`;
  if (part.heading === 'Changed in the text') {
    const lines = facts.map((fact: FactChange) => led(factLine(fact), fact.newRange));
    return `${heading}<ul class="points">${lines.join('')}</ul>`;
  }
  if (part.heading === 'Findings that are new') {
    const lines = findings.gained.map(({ message, range }: Finding) => led(message, range));
    return `${heading}<ul class="points">${lines.join('')}</ul>`;
  }
  return heading + pointsHtml(part.lines);
}

const figureHeads = new Set(['old', 'new', 'change']);
