import type { Air } from '../air/air-properties.js';
import { requireNumber } from '../errors/require-number.js';
import { heatRatio } from '../openings/air-friction.js';
import type { PerforatedSheet } from './absorber-layer.js';
import { holeInteraction } from './hole-interaction.js';

/** What fills the cavity behind a panel: fibre holds the temperature and so makes the air softer. */
export type CavityFilling = 'air' | 'fibre';

/**
 * Resonance of a panel absorber, Hz: a limp sheet on the air between it and a hard wall.
 *
 * Equation: f = (1/2 pi) sqrt(K/(m d)), K = rho c^2, with fibre in the cavity K = rho c^2/gamma; m kg/m2, d m.
 * In air near 20 degC it is 60/sqrt(m d), with fibre 50/sqrt(m d).
 * Source: common practice. Valid for depths below a quarter wavelength; the stiffness of a real panel raises it, and
 * `absorberAbsorption` gives the whole curve.
 * Errors: ArgumentError for a mass or depth that is not above 0.
 */
export function panelAbsorberFrequency(
  surfaceMass: number,
  cavityDepth: number,
  filling: CavityFilling,
  air: Air,
): number {
  requireNumber('surface mass', surfaceMass, { above: 0, unit: 'kg/m2' });
  requireNumber('cavity depth', cavityDepth, { above: 0, unit: 'metres' });
  const modulus = (air.density * air.soundSpeed ** 2) / (filling === 'fibre' ? heatRatio(air) : 1);
  return Math.sqrt(modulus / (surfaceMass * cavityDepth)) / (2 * Math.PI);
}

/**
 * Resonance of a perforated sheet before a hard wall, Hz.
 *
 * Equation: f = (c/2 pi) sqrt(p/(d (t + 2 d_e))), d_e = (4/(3 pi)) D psi(p), psi of `holeInteraction`; p open share, t
 * thickness, D hole diameter and d cavity depth in m.
 * Source: common practice. Valid for depths far below a quarter wavelength and holes wide enough that friction is small;
 * `absorberAbsorption` gives the whole curve.
 * Errors: ArgumentError for a size that is not above 0.
 */
export function perforatedAbsorberFrequency(
  { thickness, holeDiameter, openArea }: Omit<PerforatedSheet, 'kind'>,
  cavityDepth: number,
  air: Air,
): number {
  requireNumber('thickness', thickness, { atLeast: 0, unit: 'metres' });
  requireNumber('hole diameter', holeDiameter, { above: 0, unit: 'metres' });
  requireNumber('open area', openArea, { above: 0, atMost: 1 });
  requireNumber('cavity depth', cavityDepth, { above: 0, unit: 'metres' });
  const length = thickness + (8 / (3 * Math.PI)) * holeDiameter * holeInteraction(openArea);
  return (air.soundSpeed / (2 * Math.PI)) * Math.sqrt(openArea / (cavityDepth * length));
}
