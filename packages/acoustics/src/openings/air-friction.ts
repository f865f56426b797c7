import type { Air } from '../air/air-properties.js';

/** Prandtl number of air, common practice; it changes by less than 1 % between 0 and 40 degC. */
export const prandtlNumber = 0.71;

/**
 * Dynamic viscosity of air, Pa s.
 *
 * Equation: mu = 1.716e-5 (T/273.15)^1.5 (273.15 + 110.4)/(T + 110.4), T in K.
 * Source: Sutherland's law (from memory); 1.81e-5 Pa s at 20 degC. Moisture is left out.
 */
export function airViscosity(air: Air): number {
  const kelvin = air.temperature + 273.15;
  const ratio = kelvin / 273.15;
  return (1.716e-5 * ratio * Math.sqrt(ratio) * (273.15 + 110.4)) / (kelvin + 110.4);
}

/** Ratio of the specific heats as it follows from density, speed of sound and pressure. */
export function heatRatio(air: Air): number {
  return (air.density * air.soundSpeed ** 2) / air.pressure;
}
