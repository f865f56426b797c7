import { isCurrency } from '@boothwright/language';
import { type RatingName, ratingNames, type Shown, shownAtFirst } from '@boothwright/presentation';

/** How figures are told, and in which money amounts are offered. No amount is ever converted. */
export interface ShownSettings extends Shown {
  /** A code of ISO 4217; empty where none was named. */
  readonly currency: string;
}

export const shownByDefault: ShownSettings = { ...shownAtFirst, currency: '' };

/** What an editor sent under `boothwright.show`; what is of no use stays as it is by default. */
export function readShown(sent: unknown): ShownSettings {
  const { units, ratings, currency } = recordOf(sent);
  return {
    units: isUnits(units) ? units : shownByDefault.units,
    ratings: areRatings(ratings) ? ratings : shownByDefault.ratings,
    currency: isMoney(currency) ? currency : shownByDefault.currency,
  };
}

/** What is wrong with it, one sentence for each. */
export function shownComplaints(sent: unknown): string[] {
  if (sent === undefined || sent === null) return [];
  if (typeof sent !== 'object' || Array.isArray(sent))
    return ['boothwright.show: expected `units`, `ratings`, `currency`'];
  const { units, ratings, currency } = recordOf(sent);
  const complaints: string[] = [];
  const complain = (name: string, expected: string, got: unknown) =>
    complaints.push(`boothwright.show.${name}: expected ${expected}, not ${JSON.stringify(got)}`);
  if (units !== undefined && !isUnits(units)) complain('units', '`metric` or `imperial`', units);
  if (ratings !== undefined && !areRatings(ratings)) {
    complain('ratings', `a list of ${ratingNames.map((name) => `\`${name}\``).join(', ')}`, ratings);
  }
  if (currency !== undefined && !isMoney(currency)) complain('currency', 'a code of ISO 4217 such as `EUR`', currency);
  return complaints;
}

function isUnits(value: unknown): value is Shown['units'] {
  return value === 'metric' || value === 'imperial';
}

/** At least one, since a wall without a rating would look as if it had none. */
function areRatings(value: unknown): value is readonly RatingName[] {
  return (
    Array.isArray(value) &&
    value.length > 0 &&
    new Set(value).size === value.length &&
    value.every((each) => (ratingNames as readonly unknown[]).includes(each))
  );
}

function isMoney(value: unknown): value is string {
  return value === '' || (typeof value === 'string' && isCurrency(value));
}

function recordOf(sent: unknown): Record<string, unknown> {
  return typeof sent === 'object' && sent !== null && !Array.isArray(sent) ? (sent as Record<string, unknown>) : {};
}
