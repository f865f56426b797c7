import { ArgumentError } from '../errors/argument-error.js';
import type { AirZones } from './air-zones.js';
import { requireZoneList } from './require-zone-list.js';
import { requireZoneRows } from './require-zone-rows.js';

/** Rejects zones whose lists don't fit together or hold a quantity that can't be, and zones that give more air than they get. */
export function requireAirZones({ volumes, between, fromOutside }: AirZones): void {
  const count = volumes.length;
  if (count === 0) throw new ArgumentError('number of zones', 0, '1 or more');
  requireZoneList('volumes', 'air volume of', volumes, count, { above: 0, unit: 'cubic metres' });
  requireZoneList('fromOutside', 'airflow from outside into', fromOutside, count, {
    atLeast: 0,
    unit: 'cubic metres per second',
  });
  requireZoneRows('between', 'airflow', between, count);
  for (let zone = 0; zone < count; zone++) {
    const others = between.map((_, other) => other).filter((other) => other !== zone);
    const inflow = others.reduce((sum, other) => sum + between[other]![zone]!, fromOutside[zone]!);
    const outflow = others.reduce((sum, other) => sum + between[zone]![other]!, 0);
    // Sums of the same flows in another order may differ by rounding.
    if (outflow > inflow * (1 + 1e-9)) {
      const words = `airflow out of zone ${zone + 1} of ${count} into other zones`;
      throw new ArgumentError(words, outflow, `at most the ${inflow} m3/s that flow into it`);
    }
  }
}
