import type { Air } from '../air/air-properties.js';
import { ArgumentError } from '../errors/argument-error.js';
import { requireNumber } from '../errors/require-number.js';
import { airAbsorptionArea } from './air-absorption-area.js';
import { requirePositive } from './require-positive.js';
import { sabineConstant } from './sabine-constant.js';

/**
 * Reverberation time by Kuttruff: Eyring's, corrected for free paths of unlike length.
 *
 * Equation: T = k V / (S a'' + 4 m V), a'' = a' (1 - g a' / 2) with a' = -ln(1 - a) and g the relative variance of the
 * free paths (variance over the square of the mean).
 * Units: volume m3, surface S m2, mean absorption coefficient a 0..1, g dimensionless, attenuation of the air dB/m;
 * result s. Infinite when nothing absorbs.
 * Source: H. Kuttruff, Room Acoustics (from memory; the absorption exponent follows from the second-order expansion of
 * the mean of (1 - a)^n over a normal spread of the number n of reflections). The variance is about 0.4 for ordinary
 * boxes with scattering walls (from memory).
 * Valid: even absorption, above the Schroeder frequency, while g a' stays below 1; above that more absorption would
 * lengthen the time, and the expansion has no meaning.
 * Errors: ArgumentError for a volume, surface or coefficient that can't be, a variance outside 0 .. 1, or a product
 * g a' of 1 or more.
 */
export function kuttruffTime(
  volume: number,
  surface: number,
  meanAbsorption: number,
  pathVariance: number,
  attenuation: number,
  air: Air,
): number {
  requirePositive('room volume', volume, 'cubic metres');
  requirePositive('room surface', surface, 'square metres');
  requireNumber('mean absorption coefficient', meanAbsorption, { atLeast: 0, atMost: 1 });
  requireNumber('relative variance of the free paths', pathVariance, { atLeast: 0, atMost: 1 });
  const exponent = -Math.log1p(-meanAbsorption);
  if (pathVariance > 0 && !(pathVariance * exponent < 1)) {
    const most = (-Math.expm1(-1 / pathVariance)).toFixed(3);
    throw new ArgumentError(
      'mean absorption coefficient',
      meanAbsorption,
      `a number below ${most} for a path variance of ${pathVariance}`,
    );
  }
  const corrected = pathVariance > 0 ? exponent * (1 - (pathVariance * exponent) / 2) : exponent;
  return sabineConstant(air) * (volume / (surface * corrected + airAbsorptionArea(volume, attenuation)));
}
