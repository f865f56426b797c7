import { type Air, dryAirConstant, saturationPressure, waterVapourConstant } from './air-properties.js';

/**
 * Mass of water vapour per mass of dry air, kg/kg: 0.622 p_v/(p - p_v), 0.622 = 287.05/461.5.
 * Units: as of `Air`. Source: ideal gas law (common practice). Errors: none beyond those of `airProperties`.
 */
export function humidityRatio(air: Air): number {
  const vapour = air.relativeHumidity * saturationPressure(air.temperature + 273.15);
  return ((dryAirConstant / waterVapourConstant) * vapour) / (air.pressure - vapour);
}
