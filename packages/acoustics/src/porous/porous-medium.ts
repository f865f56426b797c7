import type { Complex } from '../math/complex.js';
import { divide, multiply, scale, squareRoot } from '../math/complex.js';

/** A porous material seen as a fluid: impedance in Pa s/m, wavenumber in rad/m. */
export type PorousMedium = { readonly characteristicImpedance: Complex; readonly wavenumber: Complex };

/** The same fluid by its effective density in kg/m3 and its bulk modulus in Pa. */
export type EquivalentFluid = { readonly density: Complex; readonly bulkModulus: Complex };

/** rho = Z k/omega, K = Z omega/k. */
export function equivalentFluid(medium: PorousMedium, hz: number): EquivalentFluid {
  const omega = 2 * Math.PI * hz;
  return {
    density: scale(multiply(medium.characteristicImpedance, medium.wavenumber), 1 / omega),
    bulkModulus: scale(divide(medium.characteristicImpedance, medium.wavenumber), omega),
  };
}

/** Z = sqrt(rho K), k = omega sqrt(rho/K), with the roots of a wave that decays as it travels. */
export function porousMedium(fluid: EquivalentFluid, hz: number): PorousMedium {
  const slowness = squareRoot(divide(fluid.density, fluid.bulkModulus));
  return {
    characteristicImpedance: multiply(fluid.bulkModulus, slowness),
    wavenumber: scale(slowness, 2 * Math.PI * hz),
  };
}

/**
 * Removes what would make an empirical medium give off energy.
 *
 * Empirical fits are used down to 50 Hz, below the range in which they were fitted. There the imaginary part of the bulk
 * modulus can turn negative, which means a gas that feeds energy to the wave. It is then set to zero; the same for a
 * positive imaginary part of the density.
 */
export function keepPassive(medium: PorousMedium, hz: number): PorousMedium {
  const { density, bulkModulus } = equivalentFluid(medium, hz);
  if (bulkModulus.im >= 0 && density.im <= 0) return medium;
  return porousMedium(
    {
      density: { re: density.re, im: Math.min(0, density.im) },
      bulkModulus: { re: bulkModulus.re, im: Math.max(0, bulkModulus.im) },
    },
    hz,
  );
}
