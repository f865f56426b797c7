import type { Problem } from '@boothwright/language';
import type { View } from '../view.js';
import { quickFixes } from './quick-fixes.js';
import { type TextChange, withChanges } from './text-change.js';

/** A fix of one may bring the next to light; a text that needs more rounds than this gets them next time. */
const mostRounds = 8;

/** Guesses at what was meant that would change what the booth is, if they were wrong. */
const guesses: ReadonlySet<string> = new Set([
  'unknown-name',
  'unit-missing',
  'unit-of-wrong-dimension',
  'fact-missing',
]);

/** The text with every error mended for which there is one sensible way; the same text where there is none. */
export function fixedText(view: View): string {
  let { text } = view;
  let now = view;
  for (let round = 0; round < mostRounds; round++) {
    const changes = roundOf(now);
    if (changes.length === 0) return text;
    text = withChanges(text, changes);
    const next = view.withText(text);
    if (next === undefined) return text;
    now = next;
  }
  return text;
}

function roundOf(view: View): readonly TextChange[] {
  const made: TextChange[] = [];
  for (const problem of view.checked.problems) {
    if (!isPlain(problem)) continue;
    const sole = quickFixes(view, problem).find(({ preferred }) => preferred)?.candidate.changes;
    if (sole === undefined || sole.some((change) => made.some((other) => meets(change, other)))) continue;
    made.push(...sole);
  }
  return made;
}

function isPlain({ severity, id }: Problem): boolean {
  return severity === 'error' && !guesses.has(id);
}

function meets(a: TextChange, b: TextChange): boolean {
  return a.from <= b.to && b.from <= a.to;
}
