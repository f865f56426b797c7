import type { Air } from '../air/air-properties.js';
import { radiationEfficiency } from '../panels/radiation-efficiency.js';
import type { Field } from './layer.js';
import type { Leaf } from './leaf.js';

/**
 * Transmission coefficient of a single leaf by its own bending modes below its critical frequency, which the wave picture
 * of an unlimited plate leaves out; 0 at and above it, where free bending waves are part of that picture.
 *
 * Equation: tau = (2 rho c/(omega m))^2 (pi fc sigma^2)/(2 f eta_tot), eta_tot = eta + 2 rho c sigma/(omega m), sigma of
 * `radiationEfficiency`; m in kg/m2, f in Hz.
 * Source: statistical energy balance of room, plate and room, as in L. Cremer, M. Heckl, B. Petersson: Structure-Borne Sound,
 * 3rd ed. (2005) (from memory); ISO 12354-1 Annex B has the same term with a factor for the aspect ratio.
 * Valid from about the third bending mode up; 0 for a leaf without stiffness and for an unlimited panel.
 */
export function resonantTransmission(leaf: Leaf, hz: number, air: Air, field: Field): number {
  if (field.kind === 'limited' || leaf.bendingStiffness === 0 || hz >= leaf.criticalHz) return 0;
  const omega = 2 * Math.PI * hz;
  const efficiency = radiationEfficiency(hz, leaf.criticalHz, field.size, air);
  const perMass = (2 * air.impedance) / (omega * leaf.surfaceMass);
  const loss = leaf.lossFactor + perMass * efficiency;
  return Math.min(1, (perMass ** 2 * Math.PI * leaf.criticalHz * efficiency ** 2) / (2 * hz * loss));
}
