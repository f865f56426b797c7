import type { MovingProblem, MovingResult } from '@boothwright/assessment';

/** Problems of moving that a variant has and the base has not. */
export function newProblems(
  base: MovingResult | null | undefined,
  variant: MovingResult | null,
): readonly MovingProblem[] {
  const known = new Set(base?.problems.map(({ id, subject }) => `${id} ${subject}`));
  return (variant?.problems ?? []).filter(({ id, subject }) => !known.has(`${id} ${subject}`));
}
