import type { Air } from '../air/air-properties.js';
import { criticalFrequencyOf } from './critical-frequency.js';
import { massLawField, massLawNormal, thirdOctaveFieldCorrection } from './mass-law.js';
import { checkSinglePanel, requireFrequency, type SinglePanel } from './single-panel.js';

/** Loss factor below which the model has no answer at coincidence: the logarithm of nothing. */
const leastLossFactor = 1e-6;

/**
 * Transmission loss of a single panel by the three-line construction of B.H. Sharp, dB.
 *
 * Equation: up to fc/2 the field-incidence mass law; at fc 20 lg(fc m) + 10 lg(eta) - 44; in between a straight line over
 * lg f; above fc the same value plus 30 lg(f/fc), 9 dB per octave, but no more than the normal-incidence mass law.
 * Units: Hz, kg/m2.
 * Source: value at fc: D.A. Bies, C.H. Hansen, C.Q. Howard: Engineering Noise Control, 5th ed. (2017), Fig. 7.9a (as
 * transcribed); the lines between and above (from memory).
 * Valid for thin flat panels of building size above their first resonances. A loss factor below 1e-6 counts as 1e-6.
 * Errors: ArgumentError for a panel or a frequency that cannot be.
 */
export function sharpTransmissionLoss(
  panel: SinglePanel,
  hz: number,
  air: Air,
  fieldCorrectionDb: number = thirdOctaveFieldCorrection,
): number {
  checkSinglePanel(panel);
  requireFrequency(hz);
  const fc = criticalFrequencyOf(panel.surfaceMass, panel.stiffness, air);
  if (hz <= fc / 2) return massLawField(hz, panel.surfaceMass, air, fieldCorrectionDb);
  const dip = sharpCoincidenceLoss(panel, air);
  if (hz < fc) {
    const start = massLawField(fc / 2, panel.surfaceMass, air, fieldCorrectionDb);
    return start + (dip - start) * Math.log2((2 * hz) / fc);
  }
  return Math.min(dip + 30 * Math.log10(hz / fc), massLawNormal(hz, panel.surfaceMass, air));
}

/**
 * Transmission loss at the critical frequency, dB and never below 0.
 *
 * Equation: 20 lg(fc m) + 10 lg(eta) - 44. Source and units: see `sharpTransmissionLoss`.
 * Errors: ArgumentError for a panel that cannot be, or one without stiffness.
 */
export function sharpCoincidenceLoss(panel: SinglePanel, air: Air): number {
  checkSinglePanel(panel);
  const fc = criticalFrequencyOf(panel.surfaceMass, panel.stiffness, air);
  const loss = Math.max(leastLossFactor, panel.lossFactor);
  return Math.max(0, 20 * Math.log10(fc * panel.surfaceMass) + 10 * Math.log10(loss) - 44);
}
