import { requireNumber } from '../errors/require-number.js';
import type { AirZones } from './air-zones.js';
import { requireAirZones } from './require-air-zones.js';
import { requireZoneList } from './require-zone-list.js';
import type { ZoneLoad } from './zone-concentrations.js';

/** Rejects zones and a load whose lists don't fit together or hold a quantity that can't be. */
export function requireZoneLoad(zones: AirZones, { outside, generation }: ZoneLoad): void {
  requireAirZones(zones);
  requireNumber('CO2 outside', outside, { atLeast: 0 });
  requireZoneList('generation', 'CO2 generation in', generation, zones.volumes.length, { atLeast: 0 });
}
