import { ArgumentError } from '../errors/argument-error.js';

/** Still air. SI units, except the temperature in degrees Celsius. */
export type Air = {
  /** degC */
  readonly temperature: number;
  /** Pa */
  readonly pressure: number;
  /** 0 .. 1 */
  readonly relativeHumidity: number;
  /** kg/m3 */
  readonly density: number;
  /** m/s */
  readonly soundSpeed: number;
  /** Characteristic impedance, density times speed of sound, Pa s/m. */
  readonly impedance: number;
};

/** State of the air that its properties follow from. */
export type AirConditions = {
  /** degC */
  readonly temperature: number;
  /** 0 .. 1 */
  readonly relativeHumidity: number;
  /** Pa; the standard pressure when absent. */
  readonly pressure?: number;
};

/** Standard atmospheric pressure, Pa. */
export const standardPressure = 101_325;

/** Specific gas constant of dry air, J/(kg K). Source: common practice. */
export const dryAirConstant = 287.05;
/** Specific gas constant of water vapour, J/(kg K). Source: common practice. */
export const waterVapourConstant = 461.5;

/**
 * Saturation pressure of water vapour, Pa, at an absolute temperature in K.
 *
 * Equation: p_sat = p_r * 10^(-6.8346 (273.16 / T)^1.261 + 4.6151), p_r = 101 325 Pa.
 * Source: ISO 9613-1:1993 Annex B (from memory; confirmed through the attenuation values it leads to).
 */
export function saturationPressure(kelvin: number): number {
  return standardPressure * 10 ** (-6.8346 * (273.16 / kelvin) ** 1.261 + 4.6151);
}

/**
 * Density, speed of sound and characteristic impedance of moist air.
 *
 * Equations: p_v = h p_sat(T); rho = ((p - p_v) / 287.05 + p_v / 461.5) / T;
 * c = sqrt(gamma p / rho) with gamma = (7 + x) / (5 + x), x = p_v / p, the ideal mixture of a diatomic gas and water
 * vapour. In dry air this is 343.2 m/s at 20 degC, the value of ISO 9613-1 and ISO 17497-1; moisture adds up to 0.5 %
 * at room temperature, which those two standards leave out.
 * Units: temperature degC, relative humidity 0..1, pressure Pa; results kg/m3, m/s, Pa s/m.
 * Source: ideal gas law (common practice); saturation pressure as in `saturationPressure`.
 * Valid: -20 to 50 degC, near atmospheric pressure.
 * Errors: ArgumentError for a temperature outside -70 .. 100 degC, a humidity outside 0 .. 1 or a pressure not above the
 * vapour pressure.
 *
 * @example
 * ```ts
 * import { airProperties } from '@boothwright/acoustics/air';
 *
 * const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
 * air.soundSpeed; // 344
 * air.density; // 1.2
 * ```
 */
export function airProperties({ temperature, relativeHumidity, pressure = standardPressure }: AirConditions): Air {
  if (!(temperature >= -70 && temperature <= 100)) {
    throw new ArgumentError('air temperature', temperature, 'a number of degC from -70 to 100');
  }
  if (!(relativeHumidity >= 0 && relativeHumidity <= 1)) {
    throw new ArgumentError('relative humidity', relativeHumidity, 'a fraction from 0 to 1');
  }
  const kelvin = temperature + 273.15;
  const vapourPressure = relativeHumidity * saturationPressure(kelvin);
  if (!(pressure > vapourPressure && pressure < Number.POSITIVE_INFINITY)) {
    throw new ArgumentError('air pressure', pressure, `a number of Pa above ${vapourPressure}`);
  }
  const density = ((pressure - vapourPressure) / dryAirConstant + vapourPressure / waterVapourConstant) / kelvin;
  const molarFraction = vapourPressure / pressure;
  const heatRatio = (7 + molarFraction) / (5 + molarFraction);
  const soundSpeed = Math.sqrt((heatRatio * pressure) / density);
  return { temperature, pressure, relativeHumidity, density, soundSpeed, impedance: density * soundSpeed };
}
