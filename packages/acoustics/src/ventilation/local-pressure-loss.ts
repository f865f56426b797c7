import type { Air } from '../air/air-properties.js';
import { requireNumber } from '../errors/require-number.js';

/**
 * Pressure lost at a fitting, Pa: K rho U^2/2. Units: K none, air speed U m/s.
 * Source: definition of the loss coefficient K (common practice). Errors: ArgumentError for a quantity that can't be.
 */
export function localPressureLoss(coefficient: number, speed: number, air: Air): number {
  requireNumber('loss coefficient', coefficient, { atLeast: 0 });
  requireNumber('air speed', speed, { atLeast: 0, unit: 'metres per second' });
  return (coefficient * air.density * speed ** 2) / 2;
}
