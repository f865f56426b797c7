import type { Air } from '../air/air-properties.js';
import { requireNumber } from '../errors/require-number.js';
import { advanceZones } from './advance-zones.js';
import { heatRates, requireHeatLoad } from './heat-rates.js';
import { requireZoneList } from './require-zone-list.js';
import type { HeatLoad, ThermalZones } from './thermal-zones.js';

/**
 * Air temperature in several zones after a time, degC.
 *
 * Equation: C_j dT_j/dt = sum_i (c Q_ij + H_ij)(T_i - T_j) + (c Q_oj + H_oj)(T_o - T_j) + P_j, c the `airHeatCapacity`,
 * H the heat through walls (UA); exact, by the exponential of the system matrix.
 * Units: Q m3/s, H W/K, C J/K, P W, T degC, s. Source: heat balance of well-mixed zones (common practice).
 * Valid: constant flows and loads; each zone has one temperature, so a heavy wall that lags behind its air is a zone of its
 * own without airflow. The volumes aren't used. No radiation between zones, no latent heat.
 * Errors: ArgumentError for wrong lengths, conductances that differ with the way, or a quantity that can't be.
 */
export function zoneTemperatures(
  zones: ThermalZones,
  load: HeatLoad,
  start: readonly number[],
  seconds: number,
  air: Air,
): number[] {
  requireHeatLoad(zones, load);
  requireZoneList('start', 'temperature at the start in', start, zones.volumes.length, { unit: 'degC' });
  requireNumber('time', seconds, { atLeast: 0 });
  const above = start.map((temperature) => temperature - load.outside);
  return advanceZones(heatRates(zones, load, air), above, seconds).map((rise) => rise + load.outside);
}
