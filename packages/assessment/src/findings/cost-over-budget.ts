import type { BudgetItem } from '@boothwright/language';
import type { JudgedContext } from '../assessment-context.js';
import { betterWidth } from '../build/better-width.js';
import { decimals } from '../text/decimals.js';
import { joined } from '../text/joined.js';
import type { Found } from './found.js';

/** A way to spend less that changes nothing of the sound. */
interface Saving {
  readonly words: string;
  readonly amount: number;
}

/** The list costs more than asked: what can go without a decibel, the largest first, and how much of the excess that is. */
export function costOverBudget(context: JudgedContext): Found[] {
  const { requirements, spec } = context;
  const { budget } = spec;
  if (budget === undefined) return [];
  return requirements
    .filter(({ kind, verdict }) => kind === 'cost' && verdict === 'missed')
    .map((requirement): Found => {
      const { limit, unit: currency } = requirement;
      const over = (requirement.value?.value ?? limit) - limit;
      const withReserve = 1 + budget.reserve.value;
      const savings = [...surplus(context, currency), ...width(context, currency)]
        .map(({ words, amount }) => ({ words, amount: amount * withReserve }))
        .filter(({ amount }) => amount >= 0.5)
        .sort((a, b) => b.amount - a.amount || (a.words < b.words ? -1 : 1));
      const sum = savings.reduce((total, { amount }) => total + amount, 0);
      const list = savings.map(({ words, amount }) => `${words} saves ${decimals(amount, 0)} ${currency}`);
      const dearest = [...budget.items]
        .filter(({ price }) => price.value.currency === currency)
        .sort((a, b) => costOf(b) - costOf(a))
        .slice(0, 3)
        .map((item) => `${item.title ?? item.name} ${decimals(costOf(item), 0)} ${currency}`);
      return {
        id: 'cost-over-budget',
        severity: 'warning',
        range: requirement.range,
        message: `The list is ${decimals(over, 0)} ${currency} over what is asked${savings.length === 0 ? '' : `; ${decimals(sum, 0)} ${currency} of it can go without a decibel`}`,
        explanation:
          savings.length === 0
            ? `Nothing that is bought beyond the need is known: items that say \`for\` a material are held against the parts, others are not. The dearest are ${joined(dearest)}.`
            : `What no part needs or what another width of the panels saves does not change the sound. The dearest items are ${joined(dearest)}.`,
        source: 'The budget beside the parts laid out on sheets and lengths. docs/findings/cost-over-budget.md',
        fix:
          savings.length === 0
            ? 'Say of more items what they are `for`, and look at the dearest first. What a change of the build-up costs in decibels a `variant` shows.'
            : `In this order: ${joined(list)}, each with its share of the reserve.${sum < over ? ` That leaves ${decimals(over - sum, 0)} ${currency}: what a change of the build-up costs in decibels a \`variant\` shows.` : ''}`,
        figures: { over, saved: sum, ...Object.fromEntries(savings.map(({ words, amount }) => [words, amount])) },
        related: [],
      };
    });
}

function costOf({ quantity, price }: BudgetItem): number {
  return quantity.value * price.value.amount;
}

/** Items that buy more than the parts need, whole units only, and items that no part needs. */
function surplus({ booths, spec }: JudgedContext, currency: string): Saving[] {
  const [only] = booths;
  // With several booths one list is for all of them; what each leaves over is not what is left over.
  if (booths.length !== 1 || only === undefined) return [];
  return only.result.build.shopping.checks.flatMap(({ items, verdict, bought, needed, atLeast }) => {
    const item = spec.budget?.items.find(({ name }) => name === items[0]);
    const price = item?.price.value;
    if (items.length !== 1 || price === undefined || price.currency !== currency) return [];
    if (verdict === 'unused')
      return [{ words: `leaving out ${items[0]}, which no part needs,`, amount: bought * price.amount }];
    if (verdict !== 'too-many') return [];
    // Where offcuts are not in the need, a fifth of it stays as spare.
    const keep = Math.ceil(atLeast ? needed * 1.2 - 1e-9 : needed - 1e-9);
    return [
      { words: `${keep} instead of ${decimals(bought, 0)} of ${items[0]}`, amount: (bought - keep) * price.amount },
    ];
  });
}

function width({ booths, spec, memo }: JudgedContext, currency: string): Saving[] {
  return booths.flatMap(({ booth, result }) => {
    const better = betterWidth(booth, result.build, spec.budget, memo);
    // Only sheets that the list does buy can be taken off it.
    if (better?.money?.currency !== currency) return [];
    const bought = better.boards.every(
      ({ name, before }) => (result.build.shopping.stock.find((row) => row.name === name)?.bought ?? 0) >= before,
    );
    return bought ? [{ words: `panels of ${decimals(better.width * 1000, 0)} mm`, amount: better.money.amount }] : [];
  });
}
