import { requireNumber } from '../errors/require-number.js';
import { advanceZones } from './advance-zones.js';
import type { AirZones } from './air-zones.js';
import { concentrationRates } from './concentration-rates.js';
import { requireZoneList } from './require-zone-list.js';
import { requireZoneLoad } from './require-zone-load.js';

/** What is given off in each zone, and the air that is supplied. */
export type ZoneLoad = {
  /** Concentration outside, ppm. */
  readonly outside: number;
  /** Carbon dioxide given off in each zone, m3/s. */
  readonly generation: readonly number[];
};

/**
 * Carbon dioxide in several zones after a time, ppm.
 *
 * Equation: V_j dC_j/dt = sum_i Q_ij (C_i - C_j) + Q_oj (C_o - C_j) + 1e6 G_j, whose left side loses what flows in; the
 * step is exact, by the exponential of the system matrix.
 * Units: m3, m3/s, ppm, s. Source: mass balance of well-mixed zones (common practice).
 * Valid: constant flows and people; for a schedule, `followSchedule`. Air that flows in flows out somewhere, so volumes
 * stay. Errors: ArgumentError for wrong lengths or a quantity that can't be.
 */
export function zoneConcentrations(
  zones: AirZones,
  load: ZoneLoad,
  start: readonly number[],
  seconds: number,
): number[] {
  requireZoneLoad(zones, load);
  requireZoneList('start', 'CO2 at the start in', start, zones.volumes.length, { atLeast: 0 });
  requireNumber('time', seconds, { atLeast: 0 });
  return advanceZones(concentrationRates(zones, load), start, seconds);
}
