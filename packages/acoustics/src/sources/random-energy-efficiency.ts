import { requireNumber } from '../errors/require-number.js';
import type { MicrophonePattern } from './microphone-pattern.js';

/**
 * Energy that a microphone takes from sound of all directions alike, over that of an omnidirectional one that is as
 * sensitive on its axis; 0 to 1.
 *
 * Equation: the mean of (a + b cos(theta))^2 over the sphere, a^2 + b^2/3. Units: none.
 * Source: J. Eargle, The Microphone Book, 2nd ed., 2004, equation 6.4 (as transcribed), solved for first order.
 * Valid: in a diffuse field. Errors: ArgumentError for a coefficient that is no number.
 */
export function randomEnergyEfficiency({ pressure, gradient }: MicrophonePattern): number {
  requireNumber('pressure share of the pattern', pressure, {});
  requireNumber('gradient share of the pattern', gradient, {});
  return pressure ** 2 + gradient ** 2 / 3;
}
