import type { BoothResult } from '@boothwright/assessment';
import { costText } from '../parts/stock-words.js';

/** `2455 EUR, 2701 EUR with reserve · too few of 2 items`, a sum for each currency; undefined without prices. */
export function budgetLabel({ build }: BoothResult): string | undefined {
  const { typed, checks } = build.shopping;
  const short = checks.filter(({ verdict }) => verdict === 'too-few').length;
  if (typed.length === 0) return undefined;
  const sums = typed
    .map((sum) =>
      sum.withReserve === sum.amount
        ? costText(sum)
        : `${costText(sum)}, ${costText({ ...sum, amount: sum.withReserve })} with reserve`,
    )
    .join('; ');
  return short === 0 ? sums : `${sums} · too few of ${short} ${short === 1 ? 'item' : 'items'}`;
}
