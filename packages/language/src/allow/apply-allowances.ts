import type { Allowance, AllowedProblem } from '../model/allowance.js';
import type { Problem } from '../model/problem.js';
import { problemTable } from '../problems/problem-table.js';
import { isCovered } from './read-allowances.js';

export interface Applied {
  /** What is left, and what is wrong with the comments themselves. */
  readonly problems: readonly Problem[];
  readonly allowed: readonly AllowedProblem[];
  /** Those that speak of no problem of the text: findings and cautions, or nothing that there is. */
  readonly others: readonly Allowance[];
}

/**
 * Takes out what the comments allow. An error cannot be allowed, since what could not be read cannot be vouched for; a
 * comment that allows nothing is told, so that none outlives what it was written for.
 */
export function applyAllowances(problems: readonly Problem[], allowances: readonly Allowance[]): Applied {
  const own = allowances.filter(({ id }) => Object.hasOwn(problemTable, id));
  if (own.length === 0) return { problems, allowed: [], others: allowances };
  const allowed: AllowedProblem[] = [];
  const kept: Problem[] = [];
  const used = new Set<Allowance>();
  const refused = new Set<Allowance>();
  for (const problem of problems) {
    const allowance = own.find((each) => each.id === problem.id && isCovered(each, problem.range));
    if (allowance && problem.severity !== 'error') {
      used.add(allowance);
      allowed.push({ problem, allowance });
      continue;
    }
    if (allowance) refused.add(allowance);
    kept.push(problem);
  }
  for (const allowance of own) {
    if (refused.has(allowance)) kept.push(ofError(allowance));
    else if (!used.has(allowance)) kept.push(unused(allowance));
  }
  return { problems: kept, allowed, others: allowances.filter((each) => !own.includes(each)) };
}

function ofError({ id, range }: Allowance): Problem {
  return {
    id: 'allow-of-error',
    severity: 'warning',
    message: `\`${id}\` is an error here, and an error cannot be allowed: what the line means is not known`,
    range,
    hint: 'mend the line, and remove this comment',
  };
}

function unused({ id, range, covers }: Allowance): Problem {
  return {
    id: 'allow-unused',
    severity: 'warning',
    message: `nothing called \`${id}\` is told at the line that this comment speaks of`,
    range,
    hint: 'remove it, or put it on the line it is meant for or right above',
    ...(covers.to > covers.from ? { related: [{ range: covers, message: 'this is the line' }] } : {}),
  };
}
