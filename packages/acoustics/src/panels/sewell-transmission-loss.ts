import type { Air } from '../air/air-properties.js';
import { ArgumentError } from '../errors/argument-error.js';
import type { PanelSize } from '../layered/layer.js';
import { criticalFrequencyOf } from './critical-frequency.js';
import { forcedRadiationFactor } from './forced-radiation-factor.js';
import { massRatio } from './mass-law.js';
import { checkSinglePanel, requireFrequency, type SinglePanel } from './single-panel.js';

/**
 * Transmission loss of a finite panel below its critical frequency by forced vibration alone, dB.
 *
 * Equation: R = 20 lg(pi f m/(rho c)) + 20 lg(1 - (f/fc)^2) - 10 lg(2 s), s of `forcedRadiationFactor`.
 * Units: Hz, kg/m2, m.
 * Source: E.C. Sewell, J. Sound Vib. 12 (1970) 21 (from memory). Valid below about fc/2, above the first panel resonances
 * and for panels heavier than air (pi f m/(rho c) above 3 or so).
 * Errors: ArgumentError at and above the critical frequency, and for a panel that cannot be.
 */
export function sewellTransmissionLoss(panel: SinglePanel, size: PanelSize, hz: number, air: Air): number {
  checkSinglePanel(panel);
  requireFrequency(hz);
  const fc = criticalFrequencyOf(panel.surfaceMass, panel.stiffness, air);
  if (hz >= fc) throw new ArgumentError('frequency', hz, `a number of Hz below the critical frequency, ${fc}`);
  const mass = massRatio(hz, panel.surfaceMass, air) * (1 - (hz / fc) ** 2);
  return 20 * Math.log10(mass) - 10 * Math.log10(2 * forcedRadiationFactor(hz, size, air));
}
