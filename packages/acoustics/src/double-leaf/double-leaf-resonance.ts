import type { Air } from '../air/air-properties.js';
import { requireNumber } from '../errors/require-number.js';
import { cavityStiffness, type LeafCavity } from './leaf-cavity.js';

/**
 * Factor under the root by which B.H. Sharp raises the mass-air-mass resonance for a diffuse field: 1.8, in
 * M. Long: Architectural Acoustics, Eq. 9.42 (read in a transcription: 3.6 with the mass 2 m1 m2/(m1 + m2)).
 */
export const diffuseResonanceFactor = 1.8;

/**
 * Mass-air-mass resonance of two leaves with a cavity that may hold fibre, Hz.
 *
 * Equation: f0 = (1/2 pi) sqrt((s + s')(1/m1 + 1/m2)), s of `cavityStiffness`; s' Pa/m is the stiffness per area of
 * resilient connections that bear on both leaves, 0 without them.
 * Source: two masses on a spring (derived). Valid at normal incidence, `obliqueResonance` for others.
 * See also: `massAirMassFrequency`, `cavityResonances`.
 * Errors: ArgumentError for a mass that is not above 0 or a cavity that cannot be.
 */
export function doubleLeafResonance(
  m1: number,
  m2: number,
  cavity: LeafCavity,
  air: Air,
  connectionStiffness = 0,
): number {
  requireNumber('surface mass of the first leaf', m1, { above: 0, unit: 'kg/m2' });
  requireNumber('surface mass of the second leaf', m2, { above: 0, unit: 'kg/m2' });
  requireNumber('stiffness of the connections', connectionStiffness, { atLeast: 0, unit: 'Pa/m' });
  const stiffness = cavityStiffness(cavity, air) + connectionStiffness;
  return Math.sqrt(stiffness * (1 / m1 + 1 / m2)) / (2 * Math.PI);
}

/**
 * The resonance at an angle of incidence, Hz.
 *
 * Equation: f = f0/cos(theta) in an empty cavity, through which the wave runs at the same angle; f0 where dense fibre
 * keeps it from running sideways.
 * Source: plane waves in a thin layer (derived). Errors: ArgumentError for an angle outside 0 .. below 90 degrees.
 */
export function obliqueResonance(normalHz: number, angleDeg: number, sidewaysWaves: boolean): number {
  requireNumber('resonance', normalHz, { above: 0, unit: 'Hz' });
  requireNumber('angle of incidence', angleDeg, { atLeast: 0, below: 90, unit: 'degrees' });
  return sidewaysWaves ? normalHz / Math.cos((angleDeg * Math.PI) / 180) : normalHz;
}

/**
 * Frequency above which a cavity no longer acts as a spring, Hz.
 *
 * Equation: fl = c/(2 pi d). Source: M. Long: Architectural Acoustics, Eq. 9.51 (read in a transcription). d in m.
 */
export function cavityLimitFrequency(depth: number, air: Air): number {
  requireNumber('depth of the cavity', depth, { above: 0, unit: 'metres' });
  return air.soundSpeed / (2 * Math.PI * depth);
}
