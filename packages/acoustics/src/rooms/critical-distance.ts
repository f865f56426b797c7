import { requirePositive } from './require-positive.js';

/**
 * Distance from a source at which its direct sound is as strong as the reverberant sound.
 *
 * Equation: r = sqrt(Q R / (16 pi)). Units: directivity factor Q, room constant R m2; result m.
 * Source: the equality of the two terms of `levelInRoom`. Valid as that.
 * Errors: ArgumentError for a factor or room constant that isn't above zero.
 *
 * @example
 * ```ts
 * import { criticalDistance } from '@boothwright/acoustics/rooms';
 *
 * criticalDistance(1, 21.25); // 0.65
 * ```
 */
export function criticalDistance(directivity: number, roomConstant: number): number {
  requirePositive('directivity factor', directivity);
  requirePositive('room constant', roomConstant, 'square metres');
  return Math.sqrt((directivity * roomConstant) / (16 * Math.PI));
}
