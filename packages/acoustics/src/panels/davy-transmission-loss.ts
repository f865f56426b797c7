import type { Air } from '../air/air-properties.js';
import type { PanelSize } from '../layered/layer.js';
import { integrateAdaptive } from '../math/integrate-adaptive.js';
import { criticalFrequencyOf } from './critical-frequency.js';
import { davyRadiationFactor } from './davy-radiation-factor.js';
import { checkSinglePanel, requireFrequency, type SinglePanel } from './single-panel.js';

const tolerance = 1e-5;
const mostEvaluations = 60_000;

/**
 * Transmission loss of a finite single panel in a diffuse field, dB, coincidence included.
 *
 * Equation: tau = 2 Integral_0^(pi/2) 4 s/|z + 2 s|^2 sin(theta) dtheta, z = j omega m (1 - (f/fc)^2 (1 + j eta)
 * sin^4(theta))/(rho c), s(theta) of `davyRadiationFactor`. The radiation of the finite panel loads it on both faces in
 * place of 1/cos(theta), so grazing sound and coincidence at fc stay finite; for a large panel it is Cremer's integral.
 * Units: Hz, kg/m2, N m, m.
 * Source: J.L. Davy, J. Acoust. Soc. Am. 126 (2009) 871, extends Cremer's model so (idea from memory; integrated here by
 * adaptive quadrature in place of his approximations).
 * Relation to `diffuseTransmission`: that keeps the load of an infinite panel and multiplies by s cos(theta); for a panel
 * heavier than air both give the same below coincidence.
 * Valid above the first panel resonances; resonant modes below fc are left out, as the loss factor rules nothing there.
 * Never below 0 dB.
 * Errors: ArgumentError for a panel, size or frequency that cannot be; Error when the integral does not converge.
 */
export function davyTransmissionLoss(panel: SinglePanel, size: PanelSize, hz: number, air: Air): number {
  checkSinglePanel(panel);
  requireFrequency(hz);
  const fc = criticalFrequencyOf(panel.surfaceMass, panel.stiffness, air);
  const ratio = hz / fc;
  const reactance = (2 * Math.PI * hz * panel.surfaceMass) / air.impedance;
  const breaks = [0, 1];
  if (ratio > 1) {
    const cosine = Math.sqrt(1 - 1 / ratio);
    // The dip is about as wide as its total damping; breaks close to it spare the search.
    const wide = Math.min(0.3, panel.lossFactor + 2 / (reactance * Math.max(cosine, 0.05))) / 2;
    for (const place of [cosine - wide, cosine, cosine + wide]) if (place > 0 && place < 1) breaks.push(place);
  }
  breaks.sort((a, b) => a - b);
  // With u = cos(theta), sin(theta) dtheta is -du.
  const { values, converged } = integrateAdaptive(
    (u, out) => {
      const bending = ratio ** 2 * (1 - u * u) ** 2;
      const radiation = davyRadiationFactor(hz, u, size, air);
      const real = reactance * bending * panel.lossFactor + 2 * radiation;
      out[0] = (8 * radiation) / (real ** 2 + (reactance * (1 - bending)) ** 2);
    },
    1,
    breaks,
    tolerance,
    mostEvaluations,
  );
  if (!converged) throw new Error(`sum over directions did not converge at ${hz} Hz, expected an error below 1e-5`);
  return Math.max(0, -10 * Math.log10(values[0]!));
}
