import type { Air } from '../air/air-properties.js';
import { airAbsorptionArea } from './air-absorption-area.js';
import { requirePositive } from './require-positive.js';
import { meanRoomAbsorption, type SurfacePairs } from './room-surface.js';
import { sabineConstant } from './sabine-constant.js';

/**
 * Reverberation time of a box by Arau-Puchades: the geometric mean, weighted by area, of the Eyring times that each pair
 * of opposite walls would give alone.
 *
 * Equation: T = product over pairs [k V / (-S ln(1 - a_p) + 4 m V)]^(S_p / S), a_p the mean coefficient of the pair
 * weighted by area, S the area of all.
 * Units: volume m3, areas m2, coefficients 0..1, attenuation of the air dB/m; result s. Infinite when one pair absorbs
 * nothing and the air neither.
 * Source: H. Arau-Puchades, Acustica 65, 1988, p. 163 (from memory).
 * Valid: rooms near a box with absorption that differs between the pairs, above the Schroeder frequency. It is the time
 * of the early slope in such a room and never above Fitzroy's.
 * Errors: ArgumentError for a volume, area or coefficient that can't be.
 */
export function arauPuchadesTime(volume: number, pairs: SurfacePairs, attenuation: number, air: Air): number {
  requirePositive('room volume', volume, 'cubic metres');
  const means = pairs.map((surfaces) => meanRoomAbsorption(surfaces, 1));
  const area = means.reduce((sum, pair) => sum + pair.area, 0);
  const airArea = airAbsorptionArea(volume, attenuation);
  const times = means.map((pair) => sabineConstant(air) * (volume / (airArea - area * Math.log1p(-pair.absorption))));
  // A pair that swallows all sound leaves none, however hard the others are.
  if (times.includes(0)) return 0;
  return Math.exp(means.reduce((sum, pair, index) => sum + (pair.area / area) * Math.log(times[index]!), 0));
}
