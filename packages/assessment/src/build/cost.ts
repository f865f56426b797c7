import type { Budget } from '@boothwright/language';
import type { ShoppingResult } from '../result/parts-result.js';
import type { BoothResult } from '../result/result-document.js';
import { missingCost } from './missing-cost.js';

/**
 * Total of the shopping list, and what it buys too few of for the booths that are built from it; null without a list or
 * with more than one currency in it.
 */
export function costOf(
  budget: Budget | undefined,
  booths: readonly Pick<ShoppingResult, 'checks' | 'stock'>[] = [],
): BoothResult['build']['cost'] {
  if (budget === undefined || budget.items.length === 0 || currenciesOf(budget).length !== 1) return null;
  const amount = budget.items.reduce((sum, item) => sum + item.quantity.value * item.price.value.amount, 0);
  const missing = missingCost(budget, booths);
  return {
    amount,
    currency: currenciesOf(budget)[0] as string,
    withReserve: amount * (1 + budget.reserve.value),
    missing: missing.amount,
    unpriced: missing.unpriced.map(({ name }) => name),
  };
}

export function currenciesOf(budget: Budget): string[] {
  return [...new Set(budget.items.map((item) => item.price.value.currency))].sort();
}
