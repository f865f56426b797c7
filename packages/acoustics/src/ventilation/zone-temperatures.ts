import type { Air } from '../air/air-properties.js';
import { requireNumber } from '../errors/require-number.js';
import { advanceZones } from './advance-zones.js';
import { heatRates } from './heat-rates.js';
import { requireHeatLoad } from './require-heat-load.js';
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
 *
 * @example
 * ```ts
 * import { airProperties } from '@boothwright/acoustics/air';
 * import { zoneTemperatures } from '@boothwright/acoustics/ventilation';
 *
 * const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
 * // A booth of 4 m3 in a room at 20 degC: 5 l/s of its air, 40 W/K through the walls, a person and a screen.
 * const booth = {
 *   volumes: [4],
 *   between: [[0]],
 *   fromOutside: [0.005],
 *   heatCapacities: [60_000],
 *   conductances: [[0]],
 *   toOutside: [40],
 * };
 * zoneTemperatures(booth, { outside: 20, gains: [120] }, [20], 1800, air)[0]; // 22
 * ```
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
  requireNumber('time', seconds, { atLeast: 0, unit: 'seconds' });
  const above = start.map((temperature) => temperature - load.outside);
  return advanceZones(heatRates(zones, load, air), above, seconds).map((rise) => rise + load.outside);
}
