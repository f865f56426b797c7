import type { Air } from '../air/air-properties.js';
import type { Complex } from '../math/complex.js';
import { criticalFrequency } from './critical-frequency.js';
import type { Plate } from './plate.js';

/**
 * Pressure difference across an infinite thin plate over its normal velocity, Pa s/m, for a plane wave at an angle.
 *
 * Equation: Z = j omega m (1 - (f/fc)^2 (1 + j eta) sin^4 theta); f in Hz, m in kg/m2.
 * Source: L. Cremer (1942), in every textbook of building acoustics (common practice).
 * Valid for thin plates (see `bendingStiffness`); shear and rotary inertia are left out.
 */
export function plateImpedance(plate: Plate, hz: number, sinTheta: number, air: Air): Complex {
  const reactance = 2 * Math.PI * hz * plate.density * plate.thickness;
  const bending = (hz / criticalFrequency(plate, air)) ** 2 * sinTheta ** 4;
  return { re: reactance * bending * plate.lossFactor, im: reactance * (1 - bending) };
}
