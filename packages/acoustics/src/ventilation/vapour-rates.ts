import { requireNumber } from '../errors/require-number.js';
import type { AirZones } from './air-zones.js';
import { requireAirZones } from './require-air-zones.js';
import { requireZoneList } from './require-zone-list.js';
import { type ZoneRates, zoneRatesOfAir } from './zone-rates.js';
import type { VapourLoad } from './zone-vapour.js';

/** Rates of the balance of water vapour in several zones; equation and units as in `zoneVapour`. */
export function vapourRates(zones: AirZones, { outside, generation }: VapourLoad): ZoneRates {
  const source = zones.volumes.map((volume, zone) => (zones.fromOutside[zone]! * outside + generation[zone]!) / volume);
  return zoneRatesOfAir(zones, source);
}

/** Rejects zones and a load whose lists don't fit together or hold a quantity that can't be. */
export function requireVapourLoad(zones: AirZones, { outside, generation }: VapourLoad): void {
  requireAirZones(zones);
  requireNumber('water vapour outside', outside, { atLeast: 0 });
  requireZoneList('generation', 'water vapour given off in', generation, zones.volumes.length, { atLeast: 0 });
}
