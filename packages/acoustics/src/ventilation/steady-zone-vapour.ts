import type { AirZones } from './air-zones.js';
import { requireVapourLoad } from './require-vapour-load.js';
import { steadyZones } from './steady-zones.js';
import type { VapourLoad } from './vapour-load.js';
import { vapourRates } from './vapour-rates.js';

/**
 * Water vapour that the air of several zones holds in the long run, kg/m3; null when no air from outside gets to one of
 * them.
 *
 * Equation: that of `zoneVapour` with nothing changing any more. Units, source and range: as there.
 * Errors: ArgumentError for wrong lengths or a quantity that can't be.
 */
export function steadyZoneVapour(zones: AirZones, load: VapourLoad): number[] | null {
  requireVapourLoad(zones, load);
  return steadyZones(vapourRates(zones, load));
}
