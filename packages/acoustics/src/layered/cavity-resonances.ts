import type { Air } from '../air/air-properties.js';
import { tridiagonalEigenvalues } from '../math/tridiagonal-eigenvalues.js';

/** A space between two leaves, of air or filled with fibre. */
export type Cavity = {
  /** m */
  readonly thickness: number;
  /** True when fibre keeps the air at one temperature, which makes its spring softer by the ratio of heats. */
  readonly isothermal?: boolean;
};

/**
 * Resonances of n masses on the n - 1 air springs between them, Hz, lowest first.
 *
 * Equation: with stiffness s = rho c^2/d (adiabatic) or P0/d (isothermal), (2 pi f)^2 are the eigenvalues of the
 * tridiagonal matrix s_i (1/m_i + 1/m_(i+1)) on the diagonal and -sqrt(s_i s_(i+1))/m_(i+1) beside it, in the stretches
 * of the springs; the free movement of the whole wall drops out. m in kg/m2, d in m.
 * Source: mechanics (derived). Valid for cavities much thinner than a wavelength, normal incidence, leaves without
 * stiffness.
 * Errors: RangeError when the numbers of masses and cavities do not fit, or one of them is not above 0.
 */
export function cavityResonances(masses: readonly number[], gaps: readonly Cavity[], air: Air): number[] {
  if (masses.length !== gaps.length + 1) {
    throw new RangeError(
      `${masses.length} leaves enclose ${gaps.length} cavities, expected one cavity less than leaves`,
    );
  }
  for (const mass of masses) {
    if (!(mass > 0)) throw new RangeError(`surface mass is ${mass}, expected a number of kg/m2 above 0`);
  }
  const springs = gaps.map(({ thickness, isothermal = false }) => {
    if (!(thickness > 0)) throw new RangeError(`cavity is ${thickness} deep, expected a number of metres above 0`);
    return (isothermal ? air.pressure : air.density * air.soundSpeed ** 2) / thickness;
  });
  const diagonal = springs.map((spring, i) => spring * (1 / masses[i]! + 1 / masses[i + 1]!));
  const offDiagonal = springs.slice(0, -1).map((spring, i) => -Math.sqrt(spring * springs[i + 1]!) / masses[i + 1]!);
  return tridiagonalEigenvalues(diagonal, offDiagonal).map((value) => Math.sqrt(value) / (2 * Math.PI));
}
