import type { Air } from '../air/air-properties.js';
import type { Complex } from '../math/complex.js';
import { criticalFrequency } from './critical-frequency.js';
import type { Plate } from './plate.js';
import { shearParameter } from './shear-parameter.js';

/**
 * Pressure difference across an infinite plate over its normal velocity, Pa s/m, for a plane wave at an angle.
 *
 * Equation: Z = j omega m (1 - (f/fc)^2 (1 + j eta) sin^4 theta/(1 + s sin^2 theta)); f in Hz, m in kg/m2, s of
 * `shearParameter`. Source: L. Cremer (1942), in every textbook of building acoustics (common practice); shear as a second
 * spring in series (derived). Rotary inertia is left out.
 */
export function plateImpedance(plate: Plate, hz: number, sinTheta: number, air: Air): Complex {
  const reactance = 2 * Math.PI * hz * plate.density * plate.thickness;
  const shear = 1 + shearParameter(plate, hz, air) * sinTheta ** 2;
  const bending = ((hz / criticalFrequency(plate, air)) ** 2 * sinTheta ** 4) / shear;
  return { re: reactance * bending * plate.lossFactor, im: reactance * (1 - bending) };
}
