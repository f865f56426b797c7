import type { CheckResult, ProblemEntry } from '@boothwright/language';
import { renderProblem } from '../render-problems.js';

const kinds = { error: 'An error', warning: 'A warning', hint: 'A hint' } as const;
const effects = {
  error: 'What depends on the line is not judged until it is mended; a comment cannot allow it.',
  warning:
    'The text is used as it stands. When it is meant so, `# allow ID: reason` behind the line or above it keeps the warning away.',
  hint: 'The text is used as it stands; `# allow ID: reason` behind the line or above it keeps the hint away.',
} as const;

/** The documentation page of a problem, with the first of the bad inputs that brings it about. */
export function problemPage(
  id: string,
  { severity, means, remedy }: ProblemEntry,
  results: readonly CheckResult[],
): string {
  const shown = results.flatMap((result) => {
    const problem = result.problems.find((each) => each.id === id);
    return problem ? [renderProblem(result, problem)] : [];
  });
  const example = shown.length === 0 ? [] : ['', '## As it is told', '', '```text', shown[0]!, '```'];
  return [
    `# ${id}`,
    '',
    means,
    '',
    '## What to do',
    '',
    remedy,
    ...example,
    '',
    '## How it counts',
    '',
    `${kinds[severity]}. ${effects[severity].replace('ID', id)}`,
    '',
  ].join('\n');
}
