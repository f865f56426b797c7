import type { Air } from '../air/air-properties.js';
import { bendingStiffness } from './bending-stiffness.js';
import type { Plate } from './plate.js';

/** Share of the thickness that takes part in shear: Reissner's value for a plate of one material. */
const shearFactor = 5 / 6;

/**
 * How far a plate yields in shear to a wave that runs along it with the wavenumber of sound in air: its bending stiffness
 * for a trace k sin(theta) is B/(1 + s sin^2(theta)).
 *
 * Equation: s = B k^2/(kappa G h), kappa = 5/6, G = E/(2 (1 + nu)) unless the plate states its own; k = omega/c.
 * Units: Hz in, no unit out. Source: bending and shear as springs in series, E. Reissner, J. Appl. Mech. 12 (1945) A-69 for
 * kappa (from memory). Rotary inertia is left out; valid while the thickness is below half a bending wavelength or so.
 */
export function shearParameter(plate: Plate, hz: number, air: Air): number {
  return shearParameterOf(plate, bendingStiffness(plate), hz, air);
}

/** The same for a plate whose bending stiffness in N m is known. */
export function shearParameterOf(plate: Plate, stiffness: number, hz: number, air: Air): number {
  if (stiffness === 0) return 0;
  const modulus = plate.shearModulus ?? plate.youngsModulus / (2 * (1 + plate.poissonRatio));
  const wavenumber = (2 * Math.PI * hz) / air.soundSpeed;
  return (stiffness * wavenumber * wavenumber) / (shearFactor * modulus * plate.thickness);
}
