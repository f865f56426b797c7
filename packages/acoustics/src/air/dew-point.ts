import { requireNumber } from '../errors/require-number.js';
import { type Air, saturationPressure, standardPressure } from './air-properties.js';

/**
 * Temperature at which the moisture of the air begins to condense, degC.
 *
 * Equation: `saturationPressure` solved for the temperature, T = 273.16 ((4.6151 - lg(p_v/p_r))/6.8346)^(-1/1.261).
 * Units: degC. Source: as of `saturationPressure`. Valid: -20 to 50 degC, over water.
 * Errors: ArgumentError for dry air, which has no dew point.
 */
export function dewPoint(air: Air): number {
  requireNumber('relative humidity', air.relativeHumidity, { above: 0, atMost: 1 });
  const vapour = air.relativeHumidity * saturationPressure(air.temperature + 273.15);
  return 273.16 * ((4.6151 - Math.log10(vapour / standardPressure)) / 6.8346) ** (-1 / 1.261) - 273.15;
}
