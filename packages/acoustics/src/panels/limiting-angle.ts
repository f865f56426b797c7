import type { Air } from '../air/air-properties.js';
import { requireNumber } from '../errors/require-number.js';
import type { PanelSize } from '../layered/layer.js';

/** Steepest limit that the finite size of usual panels leaves, deg (J.L. Davy, from memory). */
export const largestLimitingAngleDeg = 80;

/**
 * Angle of incidence up to which a diffuse field counts for a panel of finite size, deg.
 *
 * Equation: cos^2(limit) = 1/(k sqrt(S)), k = 2 pi f/c, S in m2; no more than `largest`.
 * With it the mass law of an infinite panel, ln(1/cos^2(limit)) = ln(k sqrt(S)), is within 0.16 of the forced radiation
 * factor of `forcedRadiationFactor` for a square, and so of the spatial windowing of `finiteRadiationFactor`.
 * Source: J.L. Davy, Internoise 1990 and Building Acoustics (from memory); the relation to Sewell is derived here.
 * Where k sqrt(S) is not above 1 the panel is smaller than the sound and the angle is 0: only normal incidence.
 * Errors: ArgumentError for a frequency or side that is not above 0, or a largest angle outside 0 .. 90.
 */
export function limitingAngle(
  hz: number,
  size: PanelSize,
  air: Air,
  largest: number = largestLimitingAngleDeg,
): number {
  requireNumber('frequency', hz, { above: 0, unit: 'Hz' });
  requireNumber('width of the panel', size.width, { above: 0, unit: 'metres' });
  requireNumber('height of the panel', size.height, { above: 0, unit: 'metres' });
  requireNumber('largest limiting angle', largest, { above: 0, atMost: 90, unit: 'degrees' });
  const reach = ((2 * Math.PI * hz) / air.soundSpeed) * Math.sqrt(size.width * size.height);
  if (reach <= 1) return 0;
  return Math.min(largest, (Math.acos(Math.sqrt(1 / reach)) * 180) / Math.PI);
}
