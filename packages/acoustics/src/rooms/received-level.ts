import { ArgumentError } from '../errors/argument-error.js';
import { levelOf } from '../levels/level-of.js';
import { requirePositive } from './require-positive.js';

/**
 * Level inside a room from the level outside, in one band.
 *
 * Equation: L_in = L_out - R + 10 lg(S / A).
 * Units: levels and transmission loss dB, area of the separating element m2, absorption area of the receiving room m2.
 * Source: definition of the sound reduction index, ISO 10140-2, solved for the received level (common practice).
 * Valid: for a diffuse field on both sides; below the first modes of a small booth it does not hold.
 * Errors: ArgumentError for an area that isn't above zero or a level that is no number.
 *
 * @example
 * ```ts
 * import { receivedLevel } from '@boothwright/acoustics/rooms';
 *
 * receivedLevel(80, 45, 6, 6); // 35
 * ```
 */
export function receivedLevel(outside: number, transmissionLoss: number, area: number, absorptionArea: number): number {
  if (Number.isNaN(outside) || Number.isNaN(transmissionLoss)) {
    throw new ArgumentError(
      Number.isNaN(outside) ? 'level outside' : 'transmission loss',
      Number.NaN,
      'a number of dB',
    );
  }
  requirePositive('area of the element', area, 'square metres');
  requirePositive('absorption area', absorptionArea, 'square metres');
  return outside - transmissionLoss + levelOf(area / absorptionArea);
}
