import type { Air } from '../air/air-properties.js';
import { heatRates } from './heat-rates.js';
import { requireHeatLoad } from './require-heat-load.js';
import { steadyZones } from './steady-zones.js';
import type { HeatLoad, ThermalZones } from './thermal-zones.js';

/**
 * Air temperature that several zones reach in the long run, degC; null when neither air nor heat gets from one of them to
 * outside.
 *
 * Equation: that of `zoneTemperatures` with nothing changing any more. Units, source and range: as there.
 * Errors: ArgumentError for wrong lengths or a quantity that can't be.
 */
export function steadyZoneTemperatures(zones: ThermalZones, load: HeatLoad, air: Air): number[] | null {
  requireHeatLoad(zones, load);
  const rises = steadyZones(heatRates(zones, load, air));
  return rises === null ? null : rises.map((rise) => rise + load.outside);
}
