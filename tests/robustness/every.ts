/** Characters of all texts that are left out one by one in an ordinary run; `BOOTHWRIGHT_LONG=1` takes every one. */
const ordinaryBudget = 600;

/**
 * Every how many characters one is left out: 1 for a short text, more for a long one, so that the suite does not grow with
 * the examples. Always odd and never a multiple of five, so that the places wander through the columns of the lines.
 */
export function every(length: number, budget: number = ordinaryBudget): number {
  if (process.env.BOOTHWRIGHT_LONG === '1') return 1;
  let step = Math.max(1, Math.ceil(length / budget));
  while (step > 1 && (step % 2 === 0 || step % 5 === 0)) step += 1;
  return step;
}
