import type { Air } from '../air/air-properties.js';
import { type BoxDimensions, boxGeometry } from './box-geometry.js';
import { requireNotNegative } from './require-positive.js';

/**
 * Smoothed number of modes of a hard box per hertz.
 *
 * Equation: dN/df = 4 pi V f^2 / c^3 + pi S f / (2 c^2) + L / (8 c), the derivative of `modalCount`.
 * Units: sides m, f in Hz; result 1/Hz.
 * Source: derived from the mode count. Valid as that.
 * Errors: ArgumentError for a side that isn't above zero or a negative frequency.
 */
export function modalDensity(size: BoxDimensions, hz: number, air: Air): number {
  const { volume, surface, edges } = boxGeometry(size);
  requireNotNegative('frequency', hz, 'Hz');
  const c = air.soundSpeed;
  return (4 * Math.PI * volume * hz * hz) / c ** 3 + (Math.PI * surface * hz) / (2 * c * c) + edges / (8 * c);
}
