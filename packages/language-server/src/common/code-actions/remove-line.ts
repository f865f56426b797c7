import type { Problem, SourceRange } from '@boothwright/language';
import { statementsAt } from '../statements-at.js';
import type { View } from '../view.js';
import type { Candidate } from './candidate.js';
import { withoutStatement } from './lines.js';

/** Problems that go when a line goes. */
const idle: ReadonlySet<string> = new Set([
  'fact-without-effect',
  'screws-without-effect',
  'sill-in-flat-face',
  'variant-empty',
]);
/** The same thing said twice: either can go. */
const twice: ReadonlySet<string> = new Set(['fact-twice', 'name-twice', 'separation-twice']);

/** Lines that change nothing, or that say a thing a second time. */
export function removeLine(view: View, { id, range, hint, related = [] }: Problem): Candidate[] {
  if (idle.has(id)) {
    // Where the hint names another way, such as what is missing beside the line, that may be the better one.
    const isOnly = hint === undefined || /^(remove|leave)\b/.test(hint);
    return removed(view, range, 'Remove').map((each) => (isOnly ? each : { ...each, oneOfSeveral: true }));
  }
  if (!twice.has(id)) return [];
  const first = related.find((each) => each.range.file === view.file)?.range;
  const same = first !== undefined && said(view, first) === said(view, range);
  // Of two names that differ in what they stand for, neither can go.
  if (id === 'name-twice' && !same) return [];
  if (first === undefined || same) return removed(view, range, 'Remove the second');
  const both = [...removed(view, range, 'Remove the second'), ...removed(view, first, 'Remove the first')];
  return both.map((candidate) => ({ ...candidate, oneOfSeveral: true }));
}

function removed(view: View, range: SourceRange, what: string): Candidate[] {
  const statement = statementsAt(view.parsed, range.from).at(-1);
  if (statement === undefined) return [];
  const line = view.text.slice(statement.from, statement.headerTo).trim();
  return [{ title: `${what} \`${line}\``, changes: [withoutStatement(view.text, statement)] }];
}

function said(view: View, range: SourceRange): string {
  const statement = statementsAt(view.parsed, range.from).at(-1);
  return statement === undefined ? '' : view.text.slice(statement.from, statement.to).replace(/\s+/g, ' ');
}
