import type { Air } from '../air/air-properties.js';
import { requireNumber } from '../errors/require-number.js';
import type { PanelSize } from '../layered/layer.js';
import { criticalFrequencyOf } from './critical-frequency.js';
import { forcedRadiationFactor } from './forced-radiation-factor.js';
import { massRatio } from './mass-law.js';
import { radiationEfficiency } from './radiation-efficiency.js';
import { checkSinglePanel, requireFrequency, type SinglePanel } from './single-panel.js';

/** A homogeneous wall of finite size with all its losses. */
export type MonolithicElement = {
  readonly panel: SinglePanel;
  readonly size: PanelSize;
  /** At the frequency in question, see `laboratoryLossFactor` and `totalLossFactor`. */
  readonly totalLossFactor: number;
  /** m and m/s; with them shear makes a thick wall softer, see `thickCriticalFrequency`. */
  readonly thick?: { readonly thickness: number; readonly longitudinalSpeed: number };
};

/** Half a third octave as a ratio of frequencies: within it of fc a band counts as "about fc" (our reading). */
const halfBand = 10 ** 0.05;

/**
 * Transmission loss of a monolithic element: forced and resonant transmission, dB.
 *
 * Equation, a = pi f m/(rho c): tau = [2 s_f + (l1 + l2)^2/(l1^2 + l2^2) sqrt(fc/f) s^2/eta]/a^2 below fc;
 * tau = pi s^2/(2 eta a^2) in the third octave about fc; tau = pi fc s^2/(2 f eta a^2) above it. s of
 * `radiationEfficiency`, s_f of `forcedRadiationFactor`, eta the total loss factor.
 * Units: Hz, kg/m2, N m, m. Never below 0 dB.
 * Source: EN 12354-1:2000 and ISO 12354-1:2017, Annex B (from memory). "About fc" is taken as half a third octave to
 * either side. The plateau that the annex sets for very thick walls is left out: it could not be recalled with certainty.
 * Valid for masonry, concrete and other homogeneous plates above their first few modes.
 * Errors: ArgumentError for a total loss factor that is not above 0 or an element that cannot be.
 */
export function monolithicTransmissionLoss(element: MonolithicElement, hz: number, air: Air): number {
  const { panel, size, totalLossFactor: eta, thick } = element;
  checkSinglePanel(panel);
  requireFrequency(hz);
  requireNumber('total loss factor', eta, { above: 0 });
  const thin = criticalFrequencyOf(panel.surfaceMass, panel.stiffness, air);
  const fc = thick === undefined ? thin : thickCriticalFrequency(thin, thick.thickness, thick.longitudinalSpeed, hz);
  const square = massRatio(hz, panel.surfaceMass, air) ** 2;
  const resonant = radiationEfficiency(hz, fc, size, air) ** 2 / eta;
  if (hz >= fc / halfBand) {
    const above = (Math.PI / 2) * resonant * Math.min(1, hz > fc * halfBand ? fc / hz : 1);
    return Math.max(0, -10 * Math.log10(above / square));
  }
  const shape = (size.width + size.height) ** 2 / (size.width ** 2 + size.height ** 2);
  const free = Number.isFinite(fc) ? shape * Math.sqrt(fc / hz) * resonant : 0;
  return Math.max(0, -10 * Math.log10((2 * forcedRadiationFactor(hz, size, air) + free) / square));
}

/**
 * Critical frequency of a thick wall as it acts at one frequency, Hz: shear and rotary inertia slow its bending waves.
 *
 * Equation, x = 4.05 h f/cL: fc (x + sqrt(1 + x^2)) up to fp = cL/(5.5 h); above it 2 fc (f/fp)^3.
 * Units: h in m, cL in m/s.
 * Source: EN 12354-1:2000, Annex B (from memory; the first branch is held against `thickPlateImpedance`).
 * Errors: ArgumentError for a thickness below 0 or a speed that is not above 0.
 */
export function thickCriticalFrequency(fc: number, thickness: number, longitudinalSpeed: number, hz: number): number {
  requireNumber('thickness of the wall', thickness, { atLeast: 0, unit: 'metres' });
  requireNumber('longitudinal speed', longitudinalSpeed, { above: 0, unit: 'm/s' });
  const limit = longitudinalSpeed / (5.5 * thickness);
  if (hz > limit) return 2 * fc * (hz / limit) ** 3;
  const x = (4.05 * thickness * hz) / longitudinalSpeed;
  return fc * (x + Math.sqrt(1 + x * x));
}
