import type { Budget } from '@boothwright/language';
import type { ItemCheck } from '../result/parts-result.js';

export interface MissingCost {
  /** Of the missing quantities at the price of the first item of each kind, in the currency of the list. */
  readonly amount: number;
  /** Names of the items that buy too few, in the order of the list. */
  readonly items: readonly string[];
}

/**
 * What it costs on top of the list to bring every item that says what it is `for` up to the need of all booths together.
 * Items that buy more than is needed are not counted back: what is on the list is going to be bought.
 */
export function missingCost(budget: Budget, checksOfBooths: readonly (readonly ItemCheck[])[]): MissingCost {
  const needs = new Map<string, ItemCheck>();
  for (const check of checksOfBooths.flat()) {
    const key = check.items.join(' ');
    const before = needs.get(key);
    needs.set(key, before === undefined ? check : { ...check, needed: before.needed + check.needed });
  }
  let amount = 0;
  const items: string[] = [];
  for (const { items: names, needed, bought } of needs.values()) {
    const item = budget.items.find(({ name }) => name === names[0]);
    if (item === undefined || needed <= bought + 1e-9) continue;
    amount += (needed - bought) * item.price.value.amount;
    items.push(item.title ?? item.name);
  }
  return { amount, items };
}
