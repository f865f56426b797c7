import { requireNumber } from '../errors/require-number.js';
import { requirePositive } from './require-positive.js';

/**
 * Room constant: what the reverberant level in a room depends on.
 *
 * Equation: R = S a / (1 - a). Units: surface m2, mean absorption coefficient 0..1; result m2. Infinite for a = 1.
 * Source: common practice. Valid for a diffuse field and even absorption.
 * Errors: ArgumentError for a surface or coefficient that can't be.
 *
 * @example
 * ```ts
 * import { roomConstant } from '@boothwright/acoustics/rooms';
 *
 * roomConstant(85, 0.2); // 21.3
 * ```
 */
export function roomConstant(surface: number, meanAbsorption: number): number {
  requirePositive('room surface', surface, 'square metres');
  requireNumber('mean absorption coefficient', meanAbsorption, { atLeast: 0, atMost: 1 });
  return (surface * meanAbsorption) / (1 - meanAbsorption);
}
