import type { CheckResult, Problem } from '@boothwright/language';
import type { View } from '../view.js';
import type { Candidate } from './candidate.js';
import { placesAfter, withChanges } from './text-change.js';

export interface Mend {
  readonly candidate: Candidate;
  /** True when it is the only sensible one. */
  readonly preferred: boolean;
}

/**
 * Those candidates that do mend a problem, each tried on the text: the problem is gone, and what was put in is no problem
 * itself. Of several, those go that leave more wrong than another, unless each only begins another way.
 */
export function mending(view: View, problem: Problem, candidates: readonly Candidate[]): Mend[] {
  const tried = candidates.flatMap((candidate) => {
    const checked = view.checkWith(withChanges(view.text, candidate.changes));
    if (candidate.asks) return [{ candidate, left: 0 }];
    return checked !== undefined && isMended(view, problem, candidate, checked)
      ? [{ candidate, left: weight(checked) }]
      : [];
  });
  const least = Math.min(...tried.filter(({ candidate }) => !candidate.asks).map(({ left }) => left));
  const kept = tried.filter(({ candidate, left }) => candidate.asks || candidate.oneOfSeveral || left === least);
  const whole = kept.filter(({ candidate }) => !candidate.asks);
  return kept.map(({ candidate }) => ({
    candidate,
    preferred: whole.length === 1 && whole[0]!.candidate === candidate && !candidate.oneOfSeveral,
  }));
}

/** Told at the head of a block about what is in it: a mended head only brings them to light. */
const ofBlocks: ReadonlySet<string> = new Set(['block-not-closed', 'fact-missing', 'face-missing', 'no-layers']);

function isMended(view: View, problem: Problem, { changes }: Candidate, checked: CheckResult): boolean {
  const count = (problems: readonly Problem[]) =>
    problems.filter(
      ({ id, message, range }) => id === problem.id && message === problem.message && range.file === view.file,
    ).length;
  if (count(checked.problems) >= count(view.checked.problems)) return false;
  const places = placesAfter(changes);
  const atPlace = ({ id, range, severity }: Problem): boolean =>
    severity !== 'hint' &&
    !ofBlocks.has(id) &&
    range.file === view.file &&
    places.some(({ from, to }) => range.from < to && range.to > from);
  const known = new Set(view.checked.problems.map(({ id, message }) => `${id} ${message}`));
  return !checked.problems.some((each) => atPlace(each) && !known.has(`${each.id} ${each.message}`));
}

/** An error weighs more than any number of warnings. */
function weight({ problems }: CheckResult): number {
  const of = (wanted: Problem['severity']) => problems.filter(({ severity }) => severity === wanted).length;
  return of('error') * 1000 + of('warning');
}
