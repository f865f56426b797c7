import { type Air, saturationPressure, waterVapourConstant } from './air-properties.js';

/**
 * Mass of water vapour in a cubic metre of air, kg/m3.
 *
 * Equation: h p_sat(T)/(461.5 T). Units: as of `Air`. Source: ideal gas law (common practice); `saturationPressure`.
 * Valid: -20 to 50 degC. Errors: none beyond those of `airProperties`.
 */
export function vapourDensity(air: Air): number {
  const kelvin = air.temperature + 273.15;
  return (air.relativeHumidity * saturationPressure(kelvin)) / (waterVapourConstant * kelvin);
}
