import { checkPlate, type Plate } from './plate.js';

/**
 * Speed of quasi-longitudinal waves in a plate, m/s.
 *
 * Equation: cL = sqrt(E/(rho (1 - nu^2))), E in Pa, rho in kg/m3.
 * Source: common practice; C. Hopkins: Sound Insulation (2007), Table A2 lists it (as transcribed).
 * Errors: ArgumentError for a plate that cannot exist.
 */
export function plateLongitudinalSpeed(plate: Plate): number {
  checkPlate(plate);
  return Math.sqrt(plate.youngsModulus / (plate.density * (1 - plate.poissonRatio ** 2)));
}

/**
 * Speed of quasi-longitudinal waves in a slender bar, m/s.
 *
 * Equation: sqrt(E/rho), E in Pa, rho in kg/m3. Source: common practice.
 */
export function barLongitudinalSpeed(plate: Plate): number {
  checkPlate(plate);
  return Math.sqrt(plate.youngsModulus / plate.density);
}

/**
 * Shear modulus of an isotropic solid, Pa.
 *
 * Equation: G = E/(2 (1 + nu)). Source: theory of elasticity (common practice).
 */
export function shearModulus(plate: Plate): number {
  checkPlate(plate);
  return plate.youngsModulus / (2 * (1 + plate.poissonRatio));
}
