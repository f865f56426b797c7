import { requireNumber } from '../errors/require-number.js';
import { type Air, saturationPressure, standardPressure } from './air-properties.js';

/**
 * Attenuation of sound by the air itself, for a pure tone.
 *
 * Equation: alpha = 8.686 f^2 [1.84e-11 (p_r/p) (T/T0)^0.5
 * + (T/T0)^-2.5 (0.01275 exp(-2239.1/T) / (f_O + f^2/f_O) + 0.1068 exp(-3352.0/T) / (f_N + f^2/f_N))]
 * with the relaxation frequencies of oxygen f_O = (p/p_r)(24 + 4.04e4 h (0.02 + h)/(0.391 + h)) and nitrogen
 * f_N = (p/p_r)(T/T0)^-0.5 (9 + 280 h exp(-4.170 ((T/T0)^(-1/3) - 1))), h the molar concentration of water vapour in %,
 * T0 = 293.15 K, p_r = 101 325 Pa.
 * Units: f in Hz, result in dB/m.
 * Source: ISO 9613-1:1993, equations 3 to 5 (from memory; met by 23 printed values of its Table 1, as transcribed,
 * within 0.4 %).
 * Valid: -20 to 50 degC, 10 to 100 % relative humidity, 50 Hz to 10 kHz, below 200 kPa. Pure tones at mid-band stand
 * for whole third-octave bands.
 * Errors: ArgumentError for a frequency that is not above zero.
 *
 * @example
 * ```ts
 * import { airAttenuation, airProperties } from '@boothwright/acoustics/air';
 *
 * const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
 * // 4 kHz, dB per metre.
 * airAttenuation(4000, air); // 0.0297
 * ```
 */
export function airAttenuation(hz: number, air: Air): number {
  requireNumber('frequency', hz, { above: 0, unit: 'Hz' });
  const kelvin = air.temperature + 273.15;
  const warmth = kelvin / 293.15;
  const pressure = air.pressure / standardPressure;
  const water = (100 * air.relativeHumidity * saturationPressure(kelvin)) / air.pressure;
  const oxygen = pressure * (24 + (4.04e4 * water * (0.02 + water)) / (0.391 + water));
  const nitrogen = pressure * warmth ** -0.5 * (9 + 280 * water * Math.exp(-4.17 * (warmth ** (-1 / 3) - 1)));
  const square = hz * hz;
  const classical = (1.84e-11 / pressure) * Math.sqrt(warmth);
  const relaxing =
    (0.01275 * Math.exp(-2239.1 / kelvin)) / (oxygen + square / oxygen) +
    (0.1068 * Math.exp(-3352 / kelvin)) / (nitrogen + square / nitrogen);
  return 8.686 * square * (classical + warmth ** -2.5 * relaxing);
}
