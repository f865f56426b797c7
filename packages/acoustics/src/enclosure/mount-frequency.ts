import { requireNumber } from '../errors/require-number.js';

/**
 * Natural frequency of a mass on springs, Hz.
 *
 * Equation: f = sqrt(k / m) / (2 pi). Units: stiffness of all springs together N/m, mass kg.
 * Source: one degree of freedom (common practice). Valid: on a floor that is stiff and heavy against the springs; on a light
 * timber floor, which gives itself, the real frequency and the gain lie elsewhere. Rubber is stiffer for small quick motions
 * than for a slow load, by 1.2 to 2 (from memory), so the static stiffness gives a lower bound.
 * Errors: ArgumentError for a stiffness or mass that isn't above zero.
 */
export function mountFrequency(stiffness: number, mass: number): number {
  requireNumber('stiffness of the mounts', stiffness, { above: 0, unit: 'newtons per metre' });
  requireNumber('mass on the mounts', mass, { above: 0, unit: 'kilograms' });
  return Math.sqrt(stiffness / mass) / (2 * Math.PI);
}
