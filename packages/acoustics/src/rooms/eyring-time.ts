import type { Air } from '../air/air-properties.js';
import { requireNumber } from '../errors/require-number.js';
import { airAbsorptionArea } from './air-absorption-area.js';
import { requirePositive } from './require-positive.js';
import { sabineConstant } from './sabine-constant.js';

/**
 * Reverberation time by Norris and Eyring.
 *
 * Equation: T = (24 ln 10 / c) V / (-S ln(1 - a) + 4 m V).
 * Units: volume m3, surface S m2, mean absorption coefficient a 0..1, attenuation of the air dB/m; result s. Infinite
 * when nothing absorbs, zero when everything does.
 * Source: C. F. Eyring, JASA 1, 1930 (equation from memory; agrees with a closed-form check).
 * Valid: for absorption spread evenly over the surfaces, above the Schroeder frequency; it takes larger coefficients
 * than Sabine's equation but not an uneven room, such as a booth with one treated wall.
 * Errors: ArgumentError for a volume, surface or coefficient that can't be.
 *
 * @example
 * ```ts
 * import { airProperties } from '@boothwright/acoustics/air';
 * import { eyringTime } from '@boothwright/acoustics/rooms';
 *
 * const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
 * // A box of 5 m by 4 m by 2.5 m whose 85 m2 of walls take a third of the sound.
 * eyringTime(50, 85, 1 / 3, 0, air); // 0.233
 * ```
 */
export function eyringTime(
  volume: number,
  surface: number,
  meanAbsorption: number,
  attenuation: number,
  air: Air,
): number {
  requirePositive('room volume', volume, 'cubic metres');
  requirePositive('room surface', surface, 'square metres');
  requireNumber('mean absorption coefficient', meanAbsorption, { atLeast: 0, atMost: 1 });
  const absorptionArea = -surface * Math.log1p(-meanAbsorption) + airAbsorptionArea(volume, attenuation);
  return sabineConstant(air) * (volume / absorptionArea);
}
