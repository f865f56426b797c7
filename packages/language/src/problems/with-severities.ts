import type { Problem, Severity } from '../model/problem.js';

/** How the problems of some identifiers are to be told; `off` leaves them out. */
export type Severities = Readonly<Record<string, Severity | 'off'>>;

/** Problems as the settings want them told. An error stays one: what could not be read does not become known by a setting. */
export function withSeverities(problems: readonly Problem[], severities: Severities | undefined): readonly Problem[] {
  if (severities === undefined) return problems;
  return problems.flatMap((problem) => {
    const wanted = Object.hasOwn(severities, problem.id) ? severities[problem.id] : undefined;
    if (wanted === undefined || problem.severity === 'error') return [problem];
    return wanted === 'off' ? [] : [{ ...problem, severity: wanted }];
  });
}
