import type { AirZones } from './air-zones.js';
import type { ZoneLoad } from './zone-load.js';
import { type ZoneRates, zoneRatesOfAir } from './zone-rates.js';

/** Rates of the balance of carbon dioxide in several zones; equation and units as in `zoneConcentrations`. */
export function concentrationRates(zones: AirZones, { outside, generation }: ZoneLoad): ZoneRates {
  const source = zones.volumes.map(
    (volume, zone) => (zones.fromOutside[zone]! * outside + 1e6 * generation[zone]!) / volume,
  );
  return zoneRatesOfAir(zones, source);
}
