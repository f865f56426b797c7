import type { AirZones } from './air-zones.js';
import { concentrationRates } from './concentration-rates.js';
import { requireConcentration } from './require-concentration.js';
import { requireZoneLoad } from './require-zone-load.js';
import { steadyZones } from './steady-zones.js';
import type { ZoneLoad } from './zone-load.js';

/**
 * Carbon dioxide that several zones reach in the long run, ppm; null when no air from outside gets to one of them.
 *
 * Equation: that of `zoneConcentrations` with nothing changing any more. Units: m3, m3/s, ppm.
 * Source and range: as there. Errors: ArgumentError for wrong lengths, a quantity that can't be, or more carbon dioxide
 * than air.
 */
export function steadyZoneConcentrations(zones: AirZones, load: ZoneLoad): number[] | null {
  requireZoneLoad(zones, load);
  const reached = steadyZones(concentrationRates(zones, load));
  reached?.forEach((value, zone) => {
    requireConcentration(`CO2 in the long run in zone ${zone + 1} of ${reached.length}`, value);
  });
  return reached;
}
