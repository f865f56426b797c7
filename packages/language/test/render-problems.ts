import type { CheckResult, Problem, SourceRange } from '@boothwright/language';

/** Source line, caret and message, as a reader of the snapshot sees what a user would see. */
export function renderProblems(result: CheckResult): string {
  return result.problems.map((problem) => renderProblem(result, problem)).join('\n\n');
}

export function renderProblem(result: CheckResult, problem: Problem): string {
  const related = (problem.related ?? []).map(({ range, message }) => `${place(result, range)}\n  ${message}`);
  const hint = problem.hint === undefined ? [] : [`  hint: ${problem.hint}`];
  return [
    `${problem.severity} ${problem.id}`,
    place(result, problem.range),
    `  ${problem.message}`,
    ...hint,
    ...related,
  ].join('\n');
}

function place(result: CheckResult, range: SourceRange): string {
  const text = result.files.find((file) => file.file === range.file)?.text ?? '';
  const before = text.slice(0, range.from).split('\n');
  const line = text.split('\n')[before.length - 1] ?? '';
  const column = before.at(-1)!.length;
  const width = Math.max(1, Math.min(range.to - range.from, line.length - column));
  const head = `${range.file}:${before.length}`;
  // Control characters are drawn, so that the snapshot stays a text.
  const shown = [...line].map((c) => (c < ' ' ? String.fromCodePoint(0x2400 + c.charCodeAt(0)) : c)).join('');
  return `${head} | ${shown}\n${' '.repeat(head.length)} | ${' '.repeat(column)}${'^'.repeat(width)}`;
}
