import { ArgumentError } from '../errors/argument-error.js';
import type { AirZones } from './air-zones.js';
import { requireZoneList } from './require-zone-list.js';
import { requireZoneRows } from './require-zone-rows.js';

/** Rejects zones whose lists don't fit together or hold a quantity that can't be. */
export function requireAirZones({ volumes, between, fromOutside }: AirZones): void {
  const count = volumes.length;
  if (count === 0) throw new ArgumentError('number of zones', 0, '1 or more');
  requireZoneList('volumes', 'air volume of', volumes, count, { above: 0 });
  requireZoneList('fromOutside', 'airflow from outside into', fromOutside, count, { atLeast: 0 });
  requireZoneRows('between', 'airflow', between, count);
}
