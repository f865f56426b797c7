import type { Air } from '../air/air-properties.js';
import { airAbsorptionArea } from './air-absorption-area.js';
import { requirePositive } from './require-positive.js';
import { meanRoomAbsorption, type RoomSurface } from './room-surface.js';
import { sabineConstant } from './sabine-constant.js';

/**
 * Reverberation time by Millington and Sette.
 *
 * Equation: T = k V / (-sum S_i ln(1 - a_i) + 4 m V), k = 24 ln 10 / c.
 * Units: volume m3, areas m2, coefficients 0..1, attenuation of the air dB/m; result s. Infinite when nothing absorbs.
 * Source: G. Millington, JASA 4, 1932; W. J. Sette, JASA 4, 1933 (from memory).
 * Valid: above the Schroeder frequency, for coefficients clearly below 1 of surfaces of like size. The result depends on
 * how a wall is cut into surfaces, and a single small surface with a coefficient of 1 (an open hatch) makes it zero,
 * which is the known fault of the model.
 * Errors: ArgumentError for a volume, area or coefficient that can't be.
 */
export function millingtonSetteTime(
  volume: number,
  surfaces: readonly RoomSurface[],
  attenuation: number,
  air: Air,
): number {
  requirePositive('room volume', volume, 'cubic metres');
  meanRoomAbsorption(surfaces, 1);
  let area = airAbsorptionArea(volume, attenuation);
  for (const surface of surfaces) if (surface.area > 0) area -= surface.area * Math.log1p(-surface.absorption);
  return sabineConstant(air) * (volume / area);
}
