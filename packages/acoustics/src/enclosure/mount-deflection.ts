import { requireNumber } from '../errors/require-number.js';

/** Standard acceleration of free fall, m/s2. */
const gravity = 9.80665;

/**
 * How far springs are pressed by what stands on them, m.
 *
 * Equation: m g / k. Units: stiffness of all springs together N/m, mass kg; result m.
 * Source: Hooke's law (common practice). Valid: for a load alike on all springs and within their straight range.
 * Errors: ArgumentError for a stiffness or mass that isn't above zero.
 */
export function mountDeflection(stiffness: number, mass: number): number {
  requireNumber('stiffness of the mounts', stiffness, { above: 0, unit: 'newtons per metre' });
  requireNumber('mass on the mounts', mass, { above: 0, unit: 'kilograms' });
  return (mass * gravity) / stiffness;
}
