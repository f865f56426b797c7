import type { CheckResult, Problem, SourceRange } from '@boothwright/language';
import { renderProblems, type TextStyle } from '@boothwright/presentation';
import type { Workspace } from './workspace.js';

/** Errors and warnings with files named as the user does; hints, such as a default that is used, stand in the report. */
export function shownProblems(checked: CheckResult, { shownAs }: Workspace): readonly Problem[] {
  const shown = (range: SourceRange): SourceRange => ({ ...range, file: shownAs(range.file) });
  return checked.problems
    .filter(({ severity }) => severity !== 'hint')
    .map((problem): Problem => {
      const related = problem.related?.map((entry) => ({ ...entry, range: shown(entry.range) }));
      return { ...problem, range: shown(problem.range), ...(related ? { related } : {}) };
    });
}

/** More are not read; the first of them are the likely cause of the rest. */
const mostProblems = 50;

export function problemsText(
  problems: readonly Problem[],
  texts: ReadonlyMap<string, string>,
  style: TextStyle,
): string {
  if (problems.length === 0) return '';
  const more = problems.length - mostProblems;
  return `${renderProblems(problems.slice(0, mostProblems), texts, style)}${more > 0 ? `\n… and ${more} more\n` : ''}\n`;
}

/** A text that describes nothing was hardly what was meant to be checked. */
export const grave = (problem: Problem) => problem.severity === 'error' || problem.id === 'empty-file';
