import type { Air } from '../air/air-properties.js';
import { ArgumentError } from '../errors/argument-error.js';
import { requireNumber } from '../errors/require-number.js';
import { tridiagonalEigenvalues } from '../math/tridiagonal-eigenvalues.js';
import { checkAir } from './check-air.js';

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
 * Errors: ArgumentError when the numbers of masses and cavities do not fit, one of them is not above 0, or for air that
 * cannot be.
 */
export function cavityResonances(masses: readonly number[], gaps: readonly Cavity[], air: Air): number[] {
  checkChain(masses, gaps);
  checkAir(air);
  const springs = gaps.map(
    ({ thickness, isothermal = false }) => (isothermal ? air.pressure : air.density * air.soundSpeed ** 2) / thickness,
  );
  const diagonal = springs.map((spring, i) => spring * (1 / masses[i]! + 1 / masses[i + 1]!));
  const offDiagonal = springs.slice(0, -1).map((spring, i) => -Math.sqrt(spring * springs[i + 1]!) / masses[i + 1]!);
  return tridiagonalEigenvalues(diagonal, offDiagonal).map((value) => Math.sqrt(value) / (2 * Math.PI));
}

function checkChain(masses: readonly number[], gaps: readonly Cavity[]): void {
  if (!Array.isArray(masses)) throw new ArgumentError('surface masses of the leaves', masses, 'a list of kg/m2');
  if (!Array.isArray(gaps)) throw new ArgumentError('cavities', gaps, 'a list of cavities with a thickness in metres');
  if (masses.length !== gaps.length + 1) {
    const leaves = masses.length === 1 ? '1 leaf' : `${masses.length} leaves`;
    throw new ArgumentError('number of cavities', gaps.length, `one less than leaves, of which there are ${leaves}`);
  }
  masses.forEach((mass, index) => {
    requireNumber(`surface mass of leaf ${index + 1}`, mass, { above: 0, unit: 'kg/m2' });
  });
  gaps.forEach((gap, index) => {
    requireNumber(`thickness of cavity ${index + 1}`, gap?.thickness, { above: 0, unit: 'metres' });
  });
}
