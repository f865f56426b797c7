import { requireNumber } from '../errors/require-number.js';
import { requireOneOf } from '../errors/require-one-of.js';

/** Where vibration goes at a rigid junction of plates. */
export type JunctionPath = 'cross-straight' | 'cross-corner' | 'tee-straight' | 'tee-corner';

const junctionPaths: readonly JunctionPath[] = ['cross-straight', 'cross-corner', 'tee-straight', 'tee-corner'];

/**
 * Vibration reduction index of a rigid junction, dB.
 *
 * Equation, M = lg(m_perpendicular/m_i): cross 8.7 + 17.1 M + 5.7 M^2 straight on, 8.7 + 5.7 M^2 round the corner; tee
 * 5.7 + 14.1 M + 5.7 M^2 straight on, 5.7 + 5.7 M^2 round the corner.
 * Units: `mass` of the plate in which the sound comes and `crossingMass` of the plate across it, kg/m2.
 * Source: EN 12354-1:2000 and ISO 12354-1:2017, Annex E (from memory). Valid for heavy homogeneous plates, -1 < M < 1 or so.
 * Errors: ArgumentError for a path that is not known or a mass that is not above 0.
 */
export function junctionVibrationIndex(path: JunctionPath, mass: number, crossingMass: number): number {
  requireOneOf('path of the vibration', path, junctionPaths);
  requireNumber('mass of the flanking element', mass, { above: 0, unit: 'kg/m2' });
  requireNumber('mass of the crossing element', crossingMass, { above: 0, unit: 'kg/m2' });
  const ratio = Math.log10(crossingMass / mass);
  const square = 5.7 * ratio ** 2;
  switch (path) {
    case 'cross-straight':
      return 8.7 + 17.1 * ratio + square;
    case 'cross-corner':
      return 8.7 + square;
    case 'tee-straight':
      return 5.7 + 14.1 * ratio + square;
    case 'tee-corner':
      return 5.7 + square;
  }
}
