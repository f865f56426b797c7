import type { Air } from '../air/air-properties.js';
import { radiationEfficiency } from '../panels/radiation-efficiency.js';
import type { Field } from './layer.js';
import type { Leaf } from './leaf.js';

/**
 * Transmission coefficient of a single leaf by its own bending modes, in both directions of the energy balance of room,
 * plate and room. Below coincidence the wave picture of an unlimited plate leaves it out; above it both say the same.
 *
 * Equation: tau = (2 rho c/(omega m))^2 (pi fc sigma^2)/(2 f eta_tot), eta_tot = eta + 2 rho c sigma/(omega m), sigma of
 * `radiationEfficiency` with the coincidence of the leaf, which shear shifts upwards; m in kg/m2, f in Hz. 0 below the
 * first mode of the panel on simple supports, f11 = c^2/(4 fc) (1/a^2 + 1/b^2), a and b its sides in m.
 * Source: derived from the balance with the modal densities V 4 pi f^2/c^3 of a room and pi S fc/c^2 of a plate per Hz, as in
 * L. Cremer, M. Heckl, B. Petersson: Structure-Borne Sound, 3rd ed. (2005) (from memory); ISO 12354-1 Annex B has the same
 * term with a factor for the aspect ratio.
 * Valid from about the third bending mode up; a mean over modes below that. 0 for a leaf without stiffness, for an
 * unlimited panel and for a leaf whose shear waves are slower than sound.
 */
export function resonantTransmission(leaf: Leaf, hz: number, air: Air, field: Field): number {
  if (field.kind === 'limited' || leaf.coincidenceHz === Number.POSITIVE_INFINITY) return 0;
  const { width, height } = field.size;
  const firstMode = (air.soundSpeed ** 2 / (4 * leaf.criticalHz)) * (1 / width ** 2 + 1 / height ** 2);
  if (hz < firstMode) return 0;
  const omega = 2 * Math.PI * hz;
  const efficiency = radiationEfficiency(hz, leaf.coincidenceHz, field.size, air);
  const perMass = (2 * air.impedance) / (omega * leaf.surfaceMass);
  const loss = leaf.lossFactor + perMass * efficiency;
  return Math.min(1, (perMass ** 2 * Math.PI * leaf.criticalHz * efficiency ** 2) / (2 * hz * loss));
}
