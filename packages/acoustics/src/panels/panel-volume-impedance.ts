import { type Complex, complex, divide } from '../math/complex.js';
import { type Edges, edgeFactor, modeFrequency } from './first-panel-resonance.js';

/** Highest order of the modes that are summed in each direction; their share of the moved volume is 99 %. */
const highestOrder = 31;

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
  const omega = 2 * Math.PI * hz;
  const { surfaceMass, stiffness, lossFactor } = panel;
  if (stiffness === 0) return complex(0, omega * surfaceMass);
  const speed = Math.sqrt(stiffness / surfaceMass);
  const raise = edgeFactor(a, b, edges);
  let re = 0;
  let im = 0;
  for (let m = 1; m <= highestOrder; m += 2) {
    for (let n = 1; n <= highestOrder; n += 2) {
      const modal = (2 * Math.PI * modeFrequency(speed, a, b, m, n) * raise) ** 2;
      const share = 64 / (Math.PI ** 4 * m * m * n * n);
      // j omega share over (x + j y).
      const x = surfaceMass * (modal - omega * omega);
      const y = surfaceMass * modal * lossFactor;
      const scale = (omega * share) / (x * x + y * y);
      re += scale * y;
      im += scale * x;
    }
  }
  return divide(complex(1), complex(re, im));
}
