import type { Air } from '../air/air-properties.js';
import { airAbsorptionArea } from './air-absorption-area.js';
import { requireNotNegative, requirePositive } from './require-positive.js';
import { sabineConstant } from './sabine-constant.js';

/**
 * Reverberation time by Sabine.
 *
 * Equation: T = (24 ln 10 / c) V / (A + 4 m V).
 * Units: volume m3, absorption area of surfaces and objects m2, attenuation of the air dB/m; result s. Infinite when
 * nothing absorbs.
 * Source: W. C. Sabine; constant and air term as in ISO 354 (common practice).
 * Valid: for a diffuse field and a small mean absorption (below about 0.2) above the Schroeder frequency. A booth is
 * small and well absorbing: there it is an orientation, not a prediction.
 * Errors: ArgumentError for a volume or an area that can't be.
 *
 * @example
 * ```ts
 * import { airProperties } from '@boothwright/acoustics/air';
 * import { sabineTime } from '@boothwright/acoustics/rooms';
 *
 * const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
 * sabineTime(50, 10, 0, air); // 0.80
 * sabineTime(-50, 10, 0, air); // throws room volume is -50
 * ```
 */
export function sabineTime(volume: number, absorptionArea: number, attenuation: number, air: Air): number {
  requirePositive('room volume', volume, 'cubic metres');
  requireNotNegative('absorption area', absorptionArea, 'square metres');
  return sabineConstant(air) * (volume / (absorptionArea + airAbsorptionArea(volume, attenuation)));
}
