import type { Air } from '../air/air-properties.js';
import { relativeHumidityOfVapour } from '../air/relative-humidity-of-vapour.js';
import type { HeatLoad, ThermalZones } from './thermal-zones.js';
import type { VapourLoad } from './vapour-load.js';
import { zoneTemperatures } from './zone-temperatures.js';
import { zoneVapour } from './zone-vapour.js';

/** Temperature and moisture of the air of each zone. */
export type ZoneClimate = {
  /** degC */
  readonly temperatures: readonly number[];
  /** Water vapour, kg/m3. */
  readonly vapour: readonly number[];
};

/** What changes the climate of zones. */
export type ClimateLoad = { readonly heat: HeatLoad; readonly vapour: VapourLoad };

/**
 * Temperature, moisture and relative humidity of the air of several zones after a time.
 *
 * Equation: `zoneTemperatures` and `zoneVapour`, then `relativeHumidityOfVapour` zone by zone; the latter as a fraction, above
 * 1 where water condenses in the air itself, which the balances don't take out.
 * Units, source and range: as of these functions; the air given is that which heat is carried by.
 * Errors: ArgumentError for wrong lengths or a quantity that can't be.
 */
export function zoneClimate(
  zones: ThermalZones,
  load: ClimateLoad,
  start: ZoneClimate,
  seconds: number,
  air: Air,
): ZoneClimate & { readonly relativeHumidities: readonly number[] } {
  const temperatures = zoneTemperatures(zones, load.heat, start.temperatures, seconds, air);
  const vapour = zoneVapour(zones, load.vapour, start.vapour, seconds);
  const relativeHumidities = vapour.map((each, zone) => relativeHumidityOfVapour(each, temperatures[zone]!));
  return { temperatures, vapour, relativeHumidities };
}
