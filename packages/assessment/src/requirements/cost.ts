import type { BoothSpec, Requirement } from '@boothwright/language';
import type { AssessedBooth } from '../booth/assess-booth.js';
import { costOf, currenciesOf } from '../build/cost.js';
import { missingCost } from '../build/missing-cost.js';
import type { RequirementResult } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { joined } from '../text/joined.js';
import { stated } from '../uncertainty/ranged.js';
import { marginWords } from './sentences.js';
import { judged, notAssessed } from './verdict.js';

/**
 * Total of the shopping list with its reserve. Where the list buys fewer sheets, lengths or square metres of a material
 * than the booth takes, what is missing counts at the price of the list: a list that is too short keeps no budget.
 */
export function judgeCost(
  requirement: Extract<Requirement, { kind: 'cost' }>,
  spec: BoothSpec,
  booths: readonly AssessedBooth[],
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
  const missing = missingCost(
    budget,
    booths.map(({ result }) => result.build.shopping.checks),
  );
  const total = cost.withReserve + missing.amount * (1 + budget.reserve.value);
  const value = stated(
    total,
    missing.amount > 0
      ? 'total of the list with its reserve, with what it buys too few of'
      : 'total of the list with its reserve, as typed',
  );
  const more =
    missing.amount > 0
      ? ` The list buys too few of ${joined(missing.items)}: what is missing adds ${decimals(missing.amount, 2)} ${cost.currency} at its own prices, ${decimals(total, 2)} ${cost.currency} with the reserve.`
      : '';
  return judged({
    ...base,
    value,
    sense: 'at-most',
    explanation: `The list comes to ${decimals(cost.amount, 2)} ${cost.currency}, with the reserve ${decimals(cost.withReserve, 2)} ${cost.currency}, where at most ${decimals(limit, 2)} ${cost.currency} is asked.${more} That is ${marginWords(limit - total, cost.currency, 2)}. Only items that say which material they are for are held against the parts; nothing else checks that the list is complete.`,
  });
}
