import type { BoothSpec, Requirement } from '@boothwright/language';
import type { AssessedBooth } from '../booth/assess-booth.js';
import { costOf, currenciesOf } from '../build/cost.js';
import { type MissingCost, missingCost } from '../build/missing-cost.js';
import type { RequirementResult } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { joined } from '../text/joined.js';
import { stated } from '../uncertainty/ranged.js';
import { marginWords } from './sentences.js';
import { judged, notAssessed } from './verdict.js';

/**
 * Total of the shopping list with its reserve. Where the list buys fewer sheets, lengths or square metres of a material
 * than the booth takes, what is missing counts at the price of the list: a list that is too short keeps no budget. What is
 * needed in a size that has no price makes the total a lower bound, which can miss the limit and cannot meet it.
 * Where the parts of a booth cannot be counted, because it is `refused`, a list that is held against them keeps no budget.
 */
export function judgeCost(
  requirement: Extract<Requirement, { kind: 'cost' }>,
  spec: BoothSpec,
  booths: readonly AssessedBooth[],
  refused: ReadonlyMap<string, string> = new Map(),
): RequirementResult {
  const limit = requirement.limit.value;
  const base = { requirement, limit, unit: requirement.currency };
  const none = (explanation: string) => notAssessed({ ...base, explanation });
  const { budget } = spec;
  if (budget === undefined || budget.items.length === 0) return none('There is no `budget` with items to add up.');
  const currencies = currenciesOf(budget);
  if (currencies.length > 1)
    return none(`The list is in ${joined(currencies)}; amounts in different currencies are not added.`);
  const cost = costOf(budget);
  if (cost === null || cost.currency !== requirement.currency) {
    return none(
      `The list is in ${joined(currencies)} and the limit in ${requirement.currency}; there is no rate of exchange.`,
    );
  }
  const uncounted = [...refused].filter(([name]) => spec.booths.some((booth) => booth.name === name));
  if (uncounted.length > 0 && budget.items.some(({ covers, fitting }) => covers !== undefined || fitting !== undefined))
    return none(
      `The list is held against the parts of the booth, and the parts of ${joined(uncounted.map(([name]) => name))} could not be counted: ${joined(uncounted.map(([, why]) => why))}.`,
    );
  const missing = missingCost(
    budget,
    booths.map(({ result }) => result.build.shopping),
  );
  const withReserve = 1 + budget.reserve.value;
  const total = cost.withReserve + missing.amount * withReserve;
  const value = stated(
    total,
    missing.amount > 0
      ? 'total of the list with its reserve, with what it buys too few of'
      : 'total of the list with its reserve, as typed',
  );
  const money = (amount: number) => `${decimals(amount, 2)} ${cost.currency}`;
  const more =
    missing.amount > 0
      ? ` The list buys too few of ${joined(missing.items)}: what is missing adds ${money(missing.amount)} at its own prices, ${money(total)} with the reserve.`
      : '';
  const list = `The list comes to ${money(cost.amount)}, with the reserve ${money(cost.withReserve)}, where at most ${money(limit)} is asked.${more}`;
  const unused =
    missing.unused.amount > 0
      ? ` No part uses ${joined(missing.unused.items)}: without that the total is ${money(total - missing.unused.amount * withReserve)}.`
      : '';
  const scope =
    'Only items that say which material they are for are held against the parts; nothing else checks that the list is complete.';
  const margin = marginWords(limit - total, cost.currency, 2);
  if (missing.unpriced.length === 0)
    return judged({
      ...base,
      value,
      sense: 'at-most',
      explanation: `${list} That is ${margin}.${unused} ${scope}`,
    });
  const needs = joined(missing.unpriced.map(needWords));
  const without = `The parts need ${needs}, which no item is for and no price is known of: that is missing from the total, which is a lower bound.`;
  const lowest = { ...value, basis: `${value.basis}, and a lower bound: what has no price is missing` };
  if (total > limit)
    return judged({
      ...base,
      value: lowest,
      atLeast: true,
      sense: 'at-most',
      explanation: `${list} That is at least ${margin}. ${without}${unused} ${scope}`,
    });
  return notAssessed({ ...base, value: lowest, atLeast: true, explanation: `${list} ${without}${unused} ${scope}` });
}

/** `48 lengths of softwood 45 x 120 mm`. */
function needWords({ name, unit, quantity, atLeast }: MissingCost['unpriced'][number]): string {
  const whole = unit === 'sheet' || unit === 'length';
  const number = decimals(quantity, whole ? 0 : 1);
  return `${atLeast ? 'at least ' : ''}${number} ${whole && quantity !== 1 ? `${unit}s` : unit} of ${name}`;
}
