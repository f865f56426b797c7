import type { Problem, SourceRange } from '@boothwright/language';
import { displayWidth } from './display-width.js';
import { type LineStarts, lineAndColumn, lineStarts } from './line-and-column.js';
import { printable } from './printable.js';
import { joinLines } from './section.js';
import { type Paint, paint, type TextStyle } from './text-style.js';
import { wrapText } from './wrap-text.js';

const colours: Readonly<Record<Problem['severity'], Paint>> = { error: 'red', warning: 'yellow', hint: 'blue' };
/** Longer lines are cut around the place that matters. */
const longestLine = 160;

interface Listing {
  readonly text: string;
  readonly starts: LineStarts;
}

/**
 * Problems as a compiler prints them: place, severity, id and message; the line with the place underlined; what to do;
 * other lines involved. `texts` holds the text of each file by its name.
 */
export function renderProblems(
  problems: readonly Problem[],
  texts: ReadonlyMap<string, string>,
  style: TextStyle,
): string {
  const listings = new Map([...texts].map(([file, text]) => [file, { text, starts: lineStarts(text) }]));
  return problems.map((problem) => `${renderProblem(problem, listings, style)}\n`).join('\n');
}

function renderProblem(problem: Problem, listings: ReadonlyMap<string, Listing>, style: TextStyle): string {
  const colour = colours[problem.severity];
  return joinLines(
    `${placeText(problem.range, listings)}: ${paint(`${problem.severity}[${problem.id}]`, colour, style)}: ${printable(problem.message)}`,
    excerpt(problem.range, listings, colour, style),
    problem.hint && wrapText(printable(problem.hint), Math.max(40, style.width), '  help: ', '        '),
    ...(problem.related ?? []).flatMap(({ range, message }) => [
      `  ${placeText(range, listings)}: ${printable(message)}`,
      excerpt(range, listings, 'blue', style),
    ]),
  );
}

/** `file:line:column`, both counted from 1; the file alone when its text is not known. */
function placeText(range: SourceRange, listings: ReadonlyMap<string, Listing>): string {
  const listing = listings.get(range.file);
  if (!listing) return printable(range.file);
  const { line, column } = lineAndColumn(listing.text, range.from, listing.starts);
  return `${printable(range.file)}:${line}:${column}`;
}

function excerpt(range: SourceRange, listings: ReadonlyMap<string, Listing>, colour: Paint, style: TextStyle): string {
  const listing = listings.get(range.file);
  if (!listing || listing.text.trim() === '') return '';
  const { text, starts } = listing;
  const { line, lineFrom, lineTo } = lineAndColumn(text, range.from, starts);
  const from = Math.min(range.from, lineTo);
  const to = Math.max(from, Math.min(range.to, lineTo));
  const cutFrom = lineTo - lineFrom > longestLine ? Math.max(lineFrom, from - longestLine / 2) : lineFrom;
  const cutTo = Math.min(lineTo, cutFrom + longestLine);
  const before = (cutFrom > lineFrom ? '…' : '') + printable(text.slice(cutFrom, from));
  const marked = printable(text.slice(from, Math.min(to, cutTo)));
  const after = printable(text.slice(Math.min(to, cutTo), cutTo)) + (cutTo < lineTo ? '…' : '');
  const number = String(line);
  const carets = '^'.repeat(Math.max(1, displayWidth(marked)));
  return joinLines(
    `  ${paint(`${number} |`, 'dim', style)} ${before}${marked}${after}`.trimEnd(),
    `  ${paint(`${' '.repeat(number.length)} |`, 'dim', style)} ${' '.repeat(displayWidth(before))}${paint(carets, colour, style)}`,
  );
}
