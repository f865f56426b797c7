import type { Booth } from '@boothwright/language';
import type { FreshAir } from './fresh-air.js';

/** The assumption behind a flow, in a sentence; nothing where there is none to make. */
export function airWayWords({ way, byVent }: FreshAir, vents: Booth['vents']): string {
  const fans = byVent.filter(({ vent }) => vent.fan !== undefined && vent.fan.flow.value > 0);
  const unstated = fans.some(({ vent }) => vent.fan?.direction === undefined);
  switch (way) {
    case 'no-fan':
      return '';
    case 'no-way-out':
      return vents.filter(({ fan }) => fan !== undefined).length > 1
        ? 'All fans blow the same way, and there is no other vent and no gap or hole of at least half the area of a duct: their air has no way through the booth, so their stated flow cannot be counted.'
        : 'There is a fan, but no second vent and no gap or hole of at least half the area of its duct: its air has no way through the booth, so its stated flow cannot be counted.';
    case 'vents':
      return fans.length > 1 && unstated
        ? `Assumed: the ${fans.length} fans blow the same way and their flows add; the vents without a fan take the air on.`
        : '';
    case 'series':
      return unstated
        ? 'Assumed: the same air passes the fans one after the other, so the weakest sets the flow.'
        : 'The same air passes the fans on both sides, so the weaker side sets the flow.';
    case 'gaps':
      return 'Assumed: the air of the fan goes through gaps and holes, because there is no second vent.';
  }
}
