import type { AirZones } from './air-zones.js';

/**
 * A linear balance dx_j/dt = sum_i inflow_ji (x_i - x_j) - outside_j x_j + source_j, x counted from the state outside
 * or with what comes from there put into the source.
 */
export type ZoneRates = {
  /** `inflow[j][i]`: how fast zone j takes on the state of zone i, 1/s; the diagonal isn't read. */
  readonly inflow: readonly (readonly number[])[];
  /** How fast each zone takes on the state outside, 1/s. */
  readonly outside: readonly number[];
  /** What raises the state of each zone, its unit per second. */
  readonly source: readonly number[];
};

/** Rates at which air that is exchanged renews each zone, with a source per zone. Units: 1/s; those of the source. */
export function zoneRatesOfAir({ volumes, between, fromOutside }: AirZones, source: readonly number[]): ZoneRates {
  return {
    inflow: volumes.map((volume, zone) => between.map((row) => row[zone]! / volume)),
    outside: volumes.map((volume, zone) => fromOutside[zone]! / volume),
    source,
  };
}
