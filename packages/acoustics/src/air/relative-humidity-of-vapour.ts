import { requireNumber } from '../errors/require-number.js';
import { saturationPressure, waterVapourConstant } from './air-properties.js';

/**
 * Relative humidity of air that holds a mass of water vapour, as a fraction.
 *
 * Equation: `vapourDensity` solved for the humidity, v 461.5 T/p_sat(T). Above 1 the air holds more than it can, and fog or
 * drops form. Units: vapour kg/m3, temperature degC. Source: as of `vapourDensity`. Valid: -20 to 50 degC.
 * Errors: ArgumentError for a quantity that can't be.
 */
export function relativeHumidityOfVapour(vapour: number, temperature: number): number {
  requireNumber('water vapour', vapour, { atLeast: 0, unit: 'kg/m3' });
  requireNumber('air temperature', temperature, { atLeast: -70, atMost: 100, unit: 'degC' });
  const kelvin = temperature + 273.15;
  return (vapour * waterVapourConstant * kelvin) / saturationPressure(kelvin);
}
