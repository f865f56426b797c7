import { requireNumber } from '../errors/require-number.js';
import { advanceZones } from './advance-zones.js';
import type { AirZones } from './air-zones.js';
import { concentrationRates } from './concentration-rates.js';
import { requireConcentration } from './require-concentration.js';
import { requireZoneList } from './require-zone-list.js';
import { requireZoneLoad } from './require-zone-load.js';
import type { ZoneLoad } from './zone-load.js';

/**
 * Carbon dioxide in several zones after a time, ppm.
 *
 * Equation: V_j dC_j/dt = sum_i Q_ij (C_i - C_j) + Q_oj (C_o - C_j) + 1e6 G_j, whose left side loses what flows in; the
 * step is exact, by the exponential of the system matrix.
 * Units: m3, m3/s, ppm, s. Source: mass balance of well-mixed zones (common practice).
 * Valid: constant flows and people; for a schedule, `followSchedule`. Air that flows in flows out somewhere, so volumes
 * stay; what a zone gives to others it must get, and exhaust to outside is the difference.
 * Errors: ArgumentError for wrong lengths, a quantity that can't be, a zone that gives more air than it gets, or a time
 * after which there would be more carbon dioxide than air.
 *
 * @example
 * ```ts
 * import { zoneConcentrations } from '@boothwright/acoustics/ventilation';
 *
 * // A room of 40 m3 with 20 l/s of fresh air, a booth of 4 m3 that takes 10 l/s from it and gives them back.
 * const zones = { volumes: [40, 4], between: [[0, 0.01], [0.01, 0]], fromOutside: [0.02, 0] };
 * // One person in the booth, an hour.
 * const after = zoneConcentrations(zones, { outside: 420, generation: [0, 5e-6] }, [420, 420], 3600);
 * after.map(Math.round); // [610, 1097]
 * ```
 */
export function zoneConcentrations(
  zones: AirZones,
  load: ZoneLoad,
  start: readonly number[],
  seconds: number,
): number[] {
  requireZoneLoad(zones, load);
  requireZoneList('start', 'CO2 at the start in', start, zones.volumes.length, {
    atLeast: 0,
    atMost: 1e6,
    unit: 'ppm',
  });
  requireNumber('time', seconds, { atLeast: 0, unit: 'seconds' });
  const reached = advanceZones(concentrationRates(zones, load), start, seconds);
  reached.forEach((value, zone) => {
    requireConcentration(`CO2 after ${seconds} s in zone ${zone + 1} of ${reached.length}`, value);
  });
  return reached;
}
