import type { Complex } from '../math/complex.js';
import type { Edges } from './first-panel-resonance.js';
import { panelImpedance } from './panel-impedance.js';

/**
 * Pressure on a panel, the same all over it, over the mean velocity of the panel, Pa s/m.
 *
 * It is a stiffness below the first bending resonance and the mass of the panel well above it.
 * Equation: 1/Z = Sum over odd m, n of (64/(pi^4 m^2 n^2)) j omega/(M (omega_mn^2 (1 + j eta) - omega^2)),
 * omega_mn of the simply supported plate times the factor of its edges at the first mode.
 * Units: `surfaceMass` M in kg/m2, `stiffness` in N m, a and b in m.
 * Source: modal sum of a simply supported plate (derived); edges as in `firstPanelResonance`.
 * Valid for thin flat panels held along the whole rim. Without stiffness it is j omega M.
 */
export function panelVolumeImpedance(
  panel: { readonly surfaceMass: number; readonly stiffness: number; readonly lossFactor: number },
  a: number,
  b: number,
  edges: Edges,
  hz: number,
): Complex {
  return panelImpedance(panel, a, b, edges)(hz);
}
