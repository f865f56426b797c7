import type { Air } from '../air/air-properties.js';
import { ArgumentError } from '../errors/argument-error.js';
import { criticalFrequencyOf } from './critical-frequency.js';
import { massRatio } from './mass-law.js';
import { checkSinglePanel, requireFrequency, type SinglePanel } from './single-panel.js';

/**
 * Transmission loss of an infinite thin panel in a diffuse field above its critical frequency, dB.
 *
 * Equation: tau = (pi/2)(fc/f)/(x (1 + eta x)), x = (pi f m/(rho c)) sqrt(1 - fc/f). Where the panel's own damping rules,
 * eta x far above 1, this is R0 + 10 lg[(2 eta/pi)(f/fc - 1)].
 * Units: Hz, kg/m2, N m; fc as in `criticalFrequencyOf`.
 * Source: L. Cremer (1942): the coincidence angle rules the integral over directions (derived here, with the radiation of
 * the panel as a second damping; without it the form of the textbooks).
 * Valid above about 1.2 fc for loss factors below 0.2; at fc itself it has no finite value.
 * Errors: ArgumentError at and below the critical frequency, and for a panel that cannot be.
 */
export function cremerTransmissionLoss(panel: SinglePanel, hz: number, air: Air): number {
  checkSinglePanel(panel);
  requireFrequency(hz);
  const fc = criticalFrequencyOf(panel.surfaceMass, panel.stiffness, air);
  if (hz <= fc) throw new ArgumentError('frequency', hz, `a number of Hz above the critical frequency, ${fc}`);
  const x = massRatio(hz, panel.surfaceMass, air) * Math.sqrt(1 - fc / hz);
  // Close to fc the resonance is wider than the range of directions; more than all cannot pass.
  const passed = (Math.PI / 2) * (fc / hz) * (1 / (x * (1 + panel.lossFactor * x)));
  return -10 * Math.log10(Math.min(1, passed));
}
