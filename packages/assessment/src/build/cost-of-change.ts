import type { Booth } from '@boothwright/language';
import type { Money, StockResult } from '../result/parts-result.js';
import { airBoxes } from './air-boxes.js';
import { airLiningUses } from './air-lining-uses.js';
import { faceUses, liningUses } from './area-uses.js';
import { ownedParts } from './owned-parts.js';
import { panelsOf } from './panels.js';
import { stockName } from './stock-name.js';

/** What a change of a booth costs in boards, timber and soft goods; negative is a saving. */
export interface CostOfChange {
  /** Null where something that changes has no price here, or prices are in several currencies. */
  readonly money: Money | null;
  /** What changes and has no price. */
  readonly withoutPrice: readonly string[];
}

/** Changes of area or run below this share are rounding. */
const noChange = 1e-6;

/**
 * Cost of a change, from the net area or run of each material before and after at what a net square metre or metre of it
 * costs in the list now, waste included. It is not laid out anew, so a sheet more or less can come of it. Null when no part
 * changes: seals, fans and work are not among the parts.
 */
export function costOfChange(before: Booth, after: Booth, stock: readonly StockResult[]): CostOfChange | null {
  const was = netByStock(before);
  const now = netByStock(after);
  const names = [...new Set([...was.keys(), ...now.keys()])].filter((name) => {
    const [one, two] = [was.get(name) ?? 0, now.get(name) ?? 0];
    return Math.abs(one - two) > noChange * Math.max(one, two);
  });
  if (names.length === 0) return null;
  const withoutPrice: string[] = [];
  const sums = new Map<string, number>();
  for (const name of names) {
    const row = stock.find((entry) => entry.name === name);
    if (row?.cost == null || row.net <= 0) {
      withoutPrice.push(name);
      continue;
    }
    const { amount, currency } = row.cost;
    const change = ((now.get(name) ?? 0) - (was.get(name) ?? 0)) / row.net;
    sums.set(currency, (sums.get(currency) ?? 0) + amount * change);
  }
  const [only] = [...sums];
  const money =
    withoutPrice.length > 0 || sums.size !== 1 || only === undefined ? null : { currency: only[0], amount: only[1] };
  return { money, withoutPrice };
}

/** m2 of boards and soft goods, m of sticks, by what they are cut from. */
function netByStock(booth: Booth): Map<string, number> {
  const division = panelsOf(booth);
  const found = new Map<string, number>();
  const add = (name: string, amount: number) => found.set(name, (found.get(name) ?? 0) + amount);
  for (const { row } of ownedParts(booth, division)) {
    const one = row.form === 'stick' ? row.lengthM : row.widthM * row.lengthM - row.cutOutM2;
    add(row.stock, row.count * one);
  }
  const uses = [
    ...(division.why === null ? [] : faceUses(booth)),
    ...liningUses(booth),
    ...airLiningUses(booth),
    ...airBoxes(booth).flatMap(({ boards }) => boards),
  ];
  for (const use of uses) add(stockName(use), use.amount);
  return found;
}
