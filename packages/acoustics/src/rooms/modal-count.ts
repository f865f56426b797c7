import type { Air } from '../air/air-properties.js';
import { type BoxDimensions, boxGeometry } from './box-geometry.js';
import { requireNotNegative } from './require-positive.js';

/**
 * Smoothed number of modes of a hard box from zero up to a frequency, the uniform pressure at 0 Hz not counted.
 *
 * Equation: N = 4 pi V f^3 / (3 c^3) + pi S f^2 / (4 c^2) + L f / (8 c), S the area of all walls, L the length of all
 * twelve edges.
 * Units: sides m, f in Hz; dimensionless.
 * Source: Rayleigh's count with the terms of axial and tangential modes (the form as printed at an online handbook
 * chapter, symbols only; coefficients derived by counting lattice points in an octant).
 * Valid: as a mean; the true number scatters about it by a few modes, which matters below the Schroeder frequency.
 * Errors: ArgumentError for a side that isn't above zero or a negative frequency.
 */
export function modalCount(size: BoxDimensions, hz: number, air: Air): number {
  const { volume, surface, edges } = boxGeometry(size);
  requireNotNegative('frequency', hz, 'Hz');
  const waves = hz / air.soundSpeed;
  return ((4 * Math.PI) / 3) * volume * waves ** 3 + (Math.PI / 4) * surface * waves ** 2 + (edges * waves) / 8;
}
