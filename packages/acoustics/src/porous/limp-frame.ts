import type { Air } from '../air/air-properties.js';
import { add, complex, divide, scale, squaredSize, subtract } from '../math/complex.js';
import { equivalentFluid, keepPassive, type PorousMedium, porousMedium } from './porous-medium.js';

/**
 * A porous medium whose fibres are dragged along by the air: a frame with mass but without stiffness.
 *
 * Equation: rho_limp = (rho_t rho_eq - rho_0^2) / (rho_t + rho_eq - 2 rho_0), rho_t = density of the material as weighed
 * plus that of the air in it; the bulk modulus stays. Densities in kg/m3.
 * Source: R. Panneton, J. Acoust. Soc. Am. 122 (2007) EL217 (from memory; the tests
 * derive it from the densities of Biot's theory at a porosity of 1). Limits: a heavy frame gives back the rigid
 * frame, a high flow resistance gives the mass of the whole material.
 * Valid for soft, low-density fibre and foam away from resonances of the frame.
 */
export function limpFrame(medium: PorousMedium, hz: number, density: number, air: Air, porosity = 1): PorousMedium {
  const fluid = equivalentFluid(medium, hz);
  const total = density + porosity * air.density;
  const numerator = subtract(scale(fluid.density, total), complex(air.density ** 2));
  const denominator = add(fluid.density, complex(total - 2 * air.density));
  // A frame that neither weighs nor resists is not there.
  if (squaredSize(denominator) === 0) return medium;
  const limp = divide(numerator, denominator);
  return keepPassive(porousMedium({ density: limp, bulkModulus: fluid.bulkModulus }, hz), hz);
}
