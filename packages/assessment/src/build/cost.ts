import type { Budget } from '@boothwright/language';
import type { BoothResult } from '../result/result-document.js';

/** Total of the shopping list; null without a list or with more than one currency in it. It is not checked against parts. */
export function costOf(budget: Budget | undefined): BoothResult['build']['cost'] {
  if (budget === undefined || budget.items.length === 0 || currenciesOf(budget).length !== 1) return null;
  const amount = budget.items.reduce((sum, item) => sum + item.quantity.value * item.price.value.amount, 0);
  return {
    amount,
    currency: currenciesOf(budget)[0] as string,
    withReserve: amount * (1 + budget.reserve.value),
  };
}

export function currenciesOf(budget: Budget): string[] {
  return [...new Set(budget.items.map((item) => item.price.value.currency))].sort();
}
