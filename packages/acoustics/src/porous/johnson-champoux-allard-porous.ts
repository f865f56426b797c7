import type { Air } from '../air/air-properties.js';
import { requireNumber } from '../errors/require-number.js';
import { add, complex, divide, multiply, scale, squareRoot, subtract } from '../math/complex.js';
import { airViscosity, heatRatio, prandtlNumber } from '../openings/air-friction.js';
import { type PorousMedium, porousMedium } from './porous-medium.js';

/** What the model of Johnson, Champoux and Allard needs to know of a porous material with a frame that stands still. */
export type PoreStructure = {
  /** Pa s/m2 */
  readonly flowResistivity: number;
  /** Share of the volume that is connected air, above 0 and up to 1. */
  readonly porosity: number;
  /** How much longer than straight the way through the pores is, squared; 1 or more. */
  readonly tortuosity: number;
  /** m, size of the pores where the air moves fastest. */
  readonly viscousLength: number;
  /** m, twice the volume of the pores over their surface; never below the viscous length in a real material. */
  readonly thermalLength: number;
};

/**
 * Porous material with a frame that stands still, by five figures of its pores.
 *
 * Equations (exp(+j omega t)):
 * rho = (a rho0/phi) [1 + sigma phi/(j omega rho0 a) sqrt(1 + 4 j a^2 mu rho0 omega/(sigma phi L)^2)],
 * K = (gamma P0/phi) / (gamma - (gamma - 1)/[1 + 8 mu/(j L'^2 Pr omega rho0) sqrt(1 + j L'^2 Pr omega rho0/(16 mu))]);
 * phi porosity, a tortuosity, L and L' viscous and thermal length in m, sigma in Pa s/m2, f in Hz, mu in Pa s. The division
 * by phi makes it a fluid for the velocity averaged over pores and frame, ready for layers.
 * Source: D.L. Johnson, J. Koplik, R. Dashen, J. Fluid Mech. 176 (1987) 379; Y. Champoux, J.F. Allard, J. Appl. Phys. 70
 * (1991) 1975 (both from memory; the limits of low and of high frequency are held in the tests).
 * Valid for pores far smaller than a wavelength, at all frequencies; at low ones the thermal part is approximate.
 * Errors: ArgumentError for a figure outside its range.
 * See also: `mikiPorous` when only the flow resistivity is known, `limpFrame`.
 */
export function johnsonChampouxAllardPorous(structure: PoreStructure, hz: number, air: Air): PorousMedium {
  checkPoreStructure(structure);
  requireNumber('frequency', hz, { above: 0, unit: 'hertz' });
  const { flowResistivity, porosity, tortuosity, viscousLength, thermalLength } = structure;
  const omega = 2 * Math.PI * hz;
  const viscosity = airViscosity(air);
  const gamma = heatRatio(air);
  const one = complex(1);

  // Written as a sum, so that a material that does not resist is no division by zero.
  const resistance = flowResistivity * porosity;
  const turning = (4 * tortuosity ** 2 * viscosity * air.density * omega) / viscousLength ** 2;
  const drag = squareRoot(complex(resistance ** 2, turning));
  const density = scale(add(complex(tortuosity * air.density), divide(drag, complex(0, omega))), 1 / porosity);

  const thermal = (thermalLength ** 2 * prandtlNumber * omega * air.density) / (16 * viscosity);
  const exchange = add(one, multiply(complex(0, -1 / (2 * thermal)), squareRoot(complex(1, thermal))));
  const softness = subtract(complex(gamma), divide(complex(gamma - 1), exchange));
  return porousMedium({ density, bulkModulus: divide(complex((gamma * air.pressure) / porosity), softness) }, hz);
}

/**
 * Rejects pores that cannot exist.
 * Errors: ArgumentError that names the figure, what was found and what was expected.
 */
export function checkPoreStructure(structure: PoreStructure): void {
  requireNumber('flow resistivity', structure.flowResistivity, { atLeast: 0, unit: 'Pa s/m2' });
  requireNumber('porosity', structure.porosity, { above: 0, atMost: 1 });
  requireNumber('tortuosity', structure.tortuosity, { atLeast: 1 });
  requireNumber('viscous length', structure.viscousLength, { above: 0, unit: 'metres' });
  requireNumber('thermal length', structure.thermalLength, { above: 0, unit: 'metres' });
}
