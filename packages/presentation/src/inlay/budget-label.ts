import type { BoothResult } from '@boothwright/assessment';
import { costText } from '../parts/stock-words.js';

/** `2455 EUR, 2701 EUR with reserve`, a sum for each currency; undefined without prices. */
export function budgetLabel({ build }: BoothResult): string | undefined {
  const { typed } = build.shopping;
  if (typed.length === 0) return undefined;
  return typed
    .map((sum) =>
      sum.withReserve === sum.amount
        ? costText(sum)
        : `${costText(sum)}, ${costText({ ...sum, amount: sum.withReserve })} with reserve`,
    )
    .join('; ');
}
