import type { Budget } from '@boothwright/language';
import type { ItemCheck, ShoppingResult, StockResult } from '../result/parts-result.js';

export interface MissingCost {
  /** Of the missing quantities at the price of the first item of each kind, in the currency of the list. */
  readonly amount: number;
  /** Names of the items that buy too few, in the order of the list. */
  readonly items: readonly string[];
  /** What the parts need in a size that no item of its material is for, and no price is known of: it is in no sum. */
  readonly unpriced: readonly Pick<StockResult, 'name' | 'unit' | 'quantity' | 'atLeast'>[];
  /** What no part of any booth uses: the names of the items, and what they come to as typed. */
  readonly unused: { readonly items: readonly string[]; readonly amount: number };
}

/**
 * What it costs on top of the list to bring every item that says what it is `for` up to the need of all booths together.
 * Items that buy more than is needed are not counted back: what is on the list is going to be bought.
 */
export function missingCost(budget: Budget, booths: readonly Pick<ShoppingResult, 'checks' | 'stock'>[]): MissingCost {
  const needs = new Map<string, ItemCheck>();
  for (const check of booths.flatMap(({ checks }) => checks)) {
    const key = check.items.join(' ');
    const before = needs.get(key);
    needs.set(key, before === undefined ? check : { ...check, needed: before.needed + check.needed });
  }
  let amount = 0;
  const items: string[] = [];
  const unused = { items: [] as string[], amount: 0 };
  for (const { items: names, needed, bought } of needs.values()) {
    const own = budget.items.filter(({ name }) => names.includes(name));
    const item = own[0];
    if (item === undefined) continue;
    if (needed <= 0) {
      unused.items.push(...own.map((each) => each.title ?? each.name));
      unused.amount += own.reduce((sum, each) => sum + each.quantity.value * each.price.value.amount, 0);
    }
    if (needed <= bought + 1e-9) continue;
    amount += (needed - bought) * item.price.value.amount;
    items.push(item.title ?? item.name);
  }
  return { amount, items, unpriced: unpricedOf(budget, booths), unused };
}

/** A list that buys a material in one size is meant to hold it in the others as well. */
function unpricedOf(budget: Budget, booths: readonly Pick<ShoppingResult, 'stock'>[]): MissingCost['unpriced'] {
  const listed = new Set(budget.items.map(({ covers }) => covers?.material.name));
  const found = new Map<string, MissingCost['unpriced'][number]>();
  for (const row of booths.flatMap(({ stock }) => stock)) {
    if (row.items.length > 0 || row.price !== null || row.quantity <= 0 || !listed.has(row.material)) continue;
    const { name, unit, quantity, atLeast } = row;
    const before = found.get(name);
    found.set(name, {
      name,
      unit,
      quantity: quantity + (before?.quantity ?? 0),
      atLeast: atLeast || before?.atLeast === true,
    });
  }
  return [...found.values()];
}
