import type { Air } from '../air/air-properties.js';
import { airAbsorptionArea } from './air-absorption-area.js';
import { requirePositive } from './require-positive.js';
import { meanRoomAbsorption, type SurfacePairs } from './room-surface.js';
import { sabineConstant } from './sabine-constant.js';

/**
 * Reverberation time of a box by Fitzroy: the mean, weighted by area, of the Eyring times that each pair of opposite
 * walls would give alone.
 *
 * Equation: T = sum over pairs (S_p / S) k V / (-S ln(1 - a_p) + 4 m V), a_p the mean coefficient of the pair weighted by
 * area, S the area of all.
 * Units: volume m3, areas m2, coefficients 0..1, attenuation of the air dB/m; result s. Infinite when one pair absorbs
 * nothing and the air neither.
 * Source: D. Fitzroy, JASA 31, 1959, p. 893 (from memory).
 * Valid: rooms near a box with absorption that differs between the pairs, above the Schroeder frequency. It overstates
 * the time when one pair is nearly hard.
 * Errors: ArgumentError for a volume, area or coefficient that can't be.
 */
export function fitzroyTime(volume: number, pairs: SurfacePairs, attenuation: number, air: Air): number {
  requirePositive('room volume', volume, 'cubic metres');
  const means = pairs.map((surfaces) => meanRoomAbsorption(surfaces, 1));
  const area = means.reduce((sum, pair) => sum + pair.area, 0);
  const airArea = airAbsorptionArea(volume, attenuation);
  return means.reduce(
    (sum, pair) =>
      sum + (pair.area / area) * sabineConstant(air) * (volume / (airArea - area * Math.log1p(-pair.absorption))),
    0,
  );
}
