import { requireNumber } from '../errors/require-number.js';

/** Density of the rock that stone wool is spun from, kg/m3: C. Hopkins, Sound Insulation (2007), p. 81 (as transcribed). */
export const stoneFibreDensity = 2600;

/** Which way air goes through a slab of fibre: along its faces, or through its thickness. */
export type FlowDirection = 'lateral' | 'longitudinal';

/** k1 and k2 of the law for stone wool: C. Hopkins, Sound Insulation (2007), Eq. 1.160, pp. 80-81 (as transcribed). */
const stoneWool = { lateral: { k1: 353, k2: 0.63 }, longitudinal: { k1: 780, k2: 0.59 } } as const;

/**
 * Flow resistivity of stone wool, Pa s/m2, from its density.
 *
 * Equation: sigma = k1 rho^(1 + k2)/d^2; rho in kg/m3, fibre diameter d in m here (in micrometres in the law).
 * k1 = 353, k2 = 0.63 along the slab, k1 = 780, k2 = 0.59 through it.
 * Source: C. Hopkins, Sound Insulation (2007), Eq. 1.160, pp. 80-81: constants as transcribed, the form of the law from
 * memory. Fitted for fibre of 4.75 micrometres and 31 to 155 kg/m3 (along) or 38 to 162 kg/m3 (through).
 * Errors: ArgumentError for a density below 0 or a diameter that is not above 0.
 */
export function stoneWoolFlowResistivity(density: number, fibreDiameter: number, direction: FlowDirection): number {
  requireFibre(density, fibreDiameter);
  const { k1, k2 } = stoneWool[direction];
  return (k1 * density ** (1 + k2)) / (fibreDiameter * 1e6) ** 2;
}

/**
 * Flow resistivity of glass or stone fibre, Pa s/m2, from density and fibre diameter.
 *
 * Equation: sigma = 3.18e-9 rho^1.53/d^2, SI.
 * Units: density kg/m3, fibre diameter m.
 * Source: D.A. Bies, C.H. Hansen, Applied Acoustics 13 (1980) (from memory). An estimate within a
 * factor of about two, since binder and spread of diameters count too.
 * Errors: ArgumentError for a density below 0 or a diameter that is not above 0.
 */
export function fibreFlowResistivity(density: number, fibreDiameter: number): number {
  requireFibre(density, fibreDiameter);
  return (3.18e-9 * density ** 1.53) / fibreDiameter ** 2;
}

/**
 * Porosity of a fibrous material: 1 - rho/rho_fibre, both in kg/m3.
 * Source: identity. Errors: ArgumentError for a density outside 0 up to that of the fibre.
 */
export function fibrePorosity(density: number, fibreDensity: number): number {
  requireNumber('density of the fibre', fibreDensity, { above: 0, unit: 'kg/m3' });
  requireNumber('density', density, { atLeast: 0, below: fibreDensity, unit: 'kg/m3' });
  return 1 - density / fibreDensity;
}

function requireFibre(density: number, diameter: number): void {
  requireNumber('density', density, { atLeast: 0, unit: 'kg/m3' });
  requireNumber('fibre diameter', diameter, { above: 0, unit: 'metres' });
}
