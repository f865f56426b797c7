import type { ResultDocument } from '@boothwright/assessment';
import type { BoothSpec, CheckResult } from '@boothwright/language';
import type { View } from '../view.js';
import type { Candidate } from './candidate.js';
import { type Looked, type Promised, promised } from './promise.js';
import { type TextChange, withChanges } from './text-change.js';

/** A fix with what it does, worked out on the very text that it makes. */
export interface ComputedFix {
  readonly title: string;
  readonly changes: readonly TextChange[];
  readonly promised: Promised;
}

/** Works a fix out; undefined for one that makes the text wrong or whose numbers cannot be had. */
export async function computedFix(
  view: View,
  results: ResultDocument,
  { title, changes: first }: Candidate,
  of: Looked,
  assess: (spec: BoothSpec) => Promise<ResultDocument>,
): Promise<ComputedFix | undefined> {
  const changes = withSizes(view, first);
  const checked = changes && view.checkWith(withChanges(view.text, changes));
  if (changes === undefined || checked === undefined || !isAsSound(view.checked, checked)) return undefined;
  // No figure of the base rests on a variant.
  const after = await assess({ ...checked.spec, variants: [] });
  return { title, changes, promised: promised(results, after, of) };
}

/** Where a wall grows, the outside that is written down grows with it; undefined for a text that is too long. */
function withSizes(view: View, changes: readonly TextChange[]): readonly TextChange[] | undefined {
  const checked = view.checkWith(withChanges(view.text, changes));
  if (checked === undefined) return undefined;
  const disagreed = (result: CheckResult) =>
    result.problems.filter(({ id, range }) => id === 'dimensions-disagree' && range.file === view.file);
  // What disagreed before is not of this change.
  if (disagreed(view.checked).length > 0) return changes;
  const sizes = disagreed(checked).flatMap(({ range, instead }): TextChange[] => {
    const from = before(changes, range.from);
    const to = before(changes, range.to);
    return from === undefined || to === undefined || instead?.[0] === undefined ? [] : [{ from, to, text: instead[0] }];
  });
  return [...changes, ...sizes];
}

/** A place of the changed text in the text before; undefined inside of what was put in. */
function before(changes: readonly TextChange[], offset: number): number | undefined {
  let moved = 0;
  for (const { from, to, text } of [...changes].sort((a, b) => a.from - b.from)) {
    const start = from + moved;
    if (offset <= start) break;
    if (offset < start + text.length) return undefined;
    moved += text.length - (to - from);
  }
  return offset - moved;
}

/** No error and no warning more than before. */
function isAsSound(was: CheckResult, is: CheckResult): boolean {
  const count = ({ problems }: CheckResult, wanted: string) =>
    problems.filter(({ severity }) => severity === wanted).length;
  return count(is, 'error') === 0 && count(is, 'warning') <= count(was, 'warning');
}
