import type { AirZones } from './air-zones.js';
import { requireAirZones } from './require-air-zones.js';
import { requireConcentration } from './require-concentration.js';
import { requireZoneList } from './require-zone-list.js';
import type { ZoneLoad } from './zone-load.js';

/** Rejects zones and a load whose lists don't fit together or hold a quantity that can't be. */
export function requireZoneLoad(zones: AirZones, { outside, generation }: ZoneLoad): void {
  requireAirZones(zones);
  requireConcentration('CO2 outside', outside);
  requireZoneList('generation', 'CO2 generation in', generation, zones.volumes.length, { atLeast: 0 });
}
