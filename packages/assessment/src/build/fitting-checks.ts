import type { BudgetItem, FittingWord } from '@boothwright/language';
import type { FittingResult, ItemCheck, SealingResult } from '../result/parts-result.js';
import { textRange } from '../text/text-range.js';

/** How much of a seal or fitting the booth needs. */
export interface FittingNeed {
  readonly word: FittingWord;
  /** Diameter of a round duct, m; undefined for everything else. */
  readonly diameterM: number | undefined;
  readonly unit: 'm' | 'piece';
  readonly quantity: number;
  readonly atLeast: boolean;
}

/** Seals by the metre and what is bought by the piece or metre, under the words that an item can be `for`. */
export function fittingNeeds(
  sealing: SealingResult,
  fittings: readonly FittingResult[],
  diameterOf: (vent: string) => number | undefined,
): FittingNeed[] {
  return [
    ...sealing.totals.map(
      ({ kind, metres }): FittingNeed => ({
        word: wordOf(kind),
        diameterM: undefined,
        unit: 'm',
        quantity: metres,
        // Corners, overlaps and a second try are not in it.
        atLeast: true,
      }),
    ),
    ...fittings.flatMap(({ what, owner, unit, quantity, atLeast }): FittingNeed[] =>
      what === 'equipment'
        ? []
        : [
            {
              word: wordOf(what),
              diameterM: what === 'duct' ? diameterOf(owner) : undefined,
              unit,
              quantity,
              atLeast,
            },
          ],
    ),
  ];
}

function wordOf(kind: SealingResult['totals'][number]['kind'] | Exclude<FittingResult['what'], 'equipment'>) {
  return kind.replace(' ', '-') as FittingWord;
}

/** Items that say which seal or fitting they are for, held against the need; items for the same one count together. */
export function fittingChecks(
  needs: readonly FittingNeed[],
  items: readonly BudgetItem[],
  verdictOf: (bought: number, needed: number) => ItemCheck['verdict'],
): ItemCheck[] {
  const groups = new Map<string, BudgetItem[]>();
  for (const item of items) {
    if (item.fitting === undefined) continue;
    const key = `${item.fitting.word} ${item.fitting.diameter?.value ?? ''}`;
    groups.set(key, [...(groups.get(key) ?? []), item]);
  }
  return [...groups.values()].map((group): ItemCheck => {
    const [first] = group as [BudgetItem];
    const own = needs.filter((need) => isFor(first, need));
    const bought = group.reduce((sum, item) => sum + item.quantity.value, 0);
    const needed = own.reduce((sum, need) => sum + need.quantity, 0);
    return {
      items: group.map(({ name }) => name),
      range: textRange(first.range),
      material: first.fitting?.word ?? '',
      unit: own[0]?.unit ?? 'piece',
      bought,
      needed,
      atLeast: own.some(({ atLeast }) => atLeast),
      verdict: own.length === 0 ? 'unused' : verdictOf(bought, needed),
    };
  });
}

function isFor({ fitting }: BudgetItem, need: FittingNeed): boolean {
  if (fitting?.word !== need.word) return false;
  const diameter = fitting.diameter?.value;
  return diameter === undefined || (need.diameterM !== undefined && Math.abs(diameter - need.diameterM) < 0.5e-3);
}
