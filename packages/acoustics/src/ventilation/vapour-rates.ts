import type { AirZones } from './air-zones.js';
import type { VapourLoad } from './vapour-load.js';
import { type ZoneRates, zoneRatesOfAir } from './zone-rates.js';

/** Rates of the balance of water vapour in several zones; equation and units as in `zoneVapour`. */
export function vapourRates(zones: AirZones, { outside, generation }: VapourLoad): ZoneRates {
  const source = zones.volumes.map((volume, zone) => (zones.fromOutside[zone]! * outside + generation[zone]!) / volume);
  return zoneRatesOfAir(zones, source);
}
