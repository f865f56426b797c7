import type { BoothSpec, Requirement } from '@boothwright/language';
import { costOf, currenciesOf } from '../build/cost.js';
import type { RequirementResult } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { joined } from '../text/joined.js';
import { stated } from '../uncertainty/ranged.js';
import { marginWords } from './sentences.js';
import { judged, notAssessed } from './verdict.js';

/** Total of the shopping list with its reserve. */
export function judgeCost(requirement: Extract<Requirement, { kind: 'cost' }>, spec: BoothSpec): RequirementResult {
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
  const value = stated(cost.withReserve, 'total of the list with its reserve, as typed');
  return judged({
    ...base,
    value,
    sense: 'at-most',
    explanation: `The list comes to ${decimals(cost.amount, 2)} ${cost.currency}, with the reserve ${decimals(cost.withReserve, 2)} ${cost.currency}, where at most ${decimals(limit, 2)} ${cost.currency} is asked: ${marginWords(limit - cost.withReserve, cost.currency, 2)}. It is the list's own total; nothing checks that the list is complete.`,
  });
}
