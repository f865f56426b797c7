import type { Air } from '../air/air-properties.js';
import type { PanelSize } from '../layered/layer.js';
import { squaredSize } from '../math/complex.js';
import { type Edges, edgeFactor, modeFrequency } from './first-panel-resonance.js';
import { panelVolumeImpedance } from './panel-volume-impedance.js';
import { checkSinglePanel, requireFrequency, type SinglePanel } from './single-panel.js';

/**
 * Transmission loss of a panel held at its rim about and below its first resonances, dB, for a wave at normal incidence.
 *
 * Equation: R = 20 lg|1 + Z/(2 rho c)|, Z of `panelVolumeImpedance`: the panel across a duct of its own section. Far below
 * the first resonance it falls by 6 dB per octave with frequency (stiffness), far above it rises like the mass law.
 * Units: Hz, kg/m2, N m, m.
 * Source: modal sum (derived). Between rooms the same panel also sees oblique sound and the modes of the rooms, which at
 * these frequencies spread results by 10 dB and more (common practice).
 * Valid while the panel is smaller than half a wavelength; above that use a diffuse-field model.
 * Errors: ArgumentError for a panel or frequency that cannot be.
 */
export function lowFrequencyTransmissionLoss(
  panel: SinglePanel,
  size: PanelSize,
  edges: Edges,
  hz: number,
  air: Air,
): number {
  checkSinglePanel(panel);
  requireFrequency(hz);
  const z = panelVolumeImpedance(panel, size.width, size.height, edges, hz);
  const load = 2 * air.impedance;
  return 10 * Math.log10(squaredSize({ re: 1 + z.re / load, im: z.im / load }));
}

/**
 * Stiffness of a panel under even pressure: pressure over mean deflection, Pa/m.
 *
 * Equation: 1/K = Sum over odd m, n of 64/(pi^4 m^2 n^2 M omega_mn^2), omega_mn as in `panelVolumeImpedance`.
 * Units: kg/m2, N m, m. Source: Navier's series (common practice); edges as in `firstPanelResonance`.
 * The transmission loss below resonance is about 20 lg(K/(4 pi f rho c)).
 */
export function panelStaticStiffness(panel: SinglePanel, size: PanelSize, edges: Edges): number {
  checkSinglePanel(panel);
  if (panel.stiffness === 0) return 0;
  const raise = edgeFactor(size.width, size.height, edges);
  const speed = Math.sqrt(panel.stiffness / panel.surfaceMass);
  let compliance = 0;
  for (let m = 1; m <= 31; m += 2) {
    for (let n = 1; n <= 31; n += 2) {
      const omega = 2 * Math.PI * modeFrequency(speed, size.width, size.height, m, n) * raise;
      compliance += 64 / (Math.PI ** 4 * m * m * n * n * panel.surfaceMass * omega ** 2);
    }
  }
  return 1 / compliance;
}
