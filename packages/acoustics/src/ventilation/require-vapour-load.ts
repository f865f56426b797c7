import { requireNumber } from '../errors/require-number.js';
import type { AirZones } from './air-zones.js';
import { requireAirZones } from './require-air-zones.js';
import { requireZoneList } from './require-zone-list.js';
import type { VapourLoad } from './vapour-load.js';

/** Rejects zones and a load whose lists don't fit together or hold a quantity that can't be. */
export function requireVapourLoad(zones: AirZones, { outside, generation }: VapourLoad): void {
  requireAirZones(zones);
  requireNumber('water vapour outside', outside, { atLeast: 0 });
  requireZoneList('generation', 'water vapour given off in', generation, zones.volumes.length, { atLeast: 0 });
}
