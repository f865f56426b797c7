import type { Air } from '../air/air-properties.js';
import { requireNumber } from '../errors/require-number.js';
import type { PanelSize } from '../layered/layer.js';
import { criticalFrequencyOf } from './critical-frequency.js';
import { edgeLossFactor } from './edge-loss-factor.js';
import { radiationEfficiency } from './radiation-efficiency.js';
import { checkSinglePanel, requireFrequency, type SinglePanel } from './single-panel.js';

/**
 * Total loss factor of a heavy element built into a laboratory, from its mass.
 *
 * Equation: eta = eta_int + m/(485 sqrt(f)), m in kg/m2, f in Hz; the second term is `edgeLossFactor`, in which m counts
 * up to 800 kg/m2.
 * Source: EN 12354-1:2000 and ISO 12354-1:2017, Annex C (from memory). Valid for masonry and concrete below 800 kg/m2 in a
 * laboratory; for a light element screwed to a frame it is a guess.
 */
export function laboratoryLossFactor(panel: SinglePanel, hz: number): number {
  checkSinglePanel(panel);
  requireFrequency(hz);
  return panel.lossFactor + edgeLossFactor(panel.surfaceMass, hz);
}

/**
 * Total loss factor of a plate: inside, by radiation from both faces and over its rim.
 *
 * Equation: eta = eta_int + 2 rho c s/(2 pi f m) + c/(pi^2 S sqrt(f fc)) sum(l alpha), s of `radiationEfficiency`, alpha
 * the share of bending energy that each border of length l takes.
 * Units: Hz, kg/m2, m, m2, m/s; alpha from 0 to 1.
 * Source: EN 12354-1:2000 and ISO 12354-1:2017, Annex C (from memory); the last term is the analogue of Sabine's formula
 * in the plane for bending waves (derivable).
 * Valid for a plate with many modes; one alpha for all borders here.
 * Errors: ArgumentError for an alpha outside 0 .. 1 or a panel without stiffness.
 */
export function totalLossFactor(
  panel: SinglePanel,
  size: PanelSize,
  borderAbsorption: number,
  hz: number,
  air: Air,
): number {
  checkSinglePanel(panel);
  requireFrequency(hz);
  requireNumber('bending stiffness of the panel', panel.stiffness, { above: 0, unit: 'newton metres' });
  requireNumber('absorption of the borders', borderAbsorption, { atLeast: 0, atMost: 1 });
  const fc = criticalFrequencyOf(panel.surfaceMass, panel.stiffness, air);
  const radiation =
    (2 * air.impedance * radiationEfficiency(hz, fc, size, air)) / (2 * Math.PI * hz * panel.surfaceMass);
  const border =
    (air.soundSpeed * 2 * (size.width + size.height) * borderAbsorption) /
    (Math.PI ** 2 * size.width * size.height * Math.sqrt(hz * fc));
  return panel.lossFactor + radiation + border;
}
