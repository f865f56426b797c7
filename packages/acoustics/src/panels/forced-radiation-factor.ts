import type { Air } from '../air/air-properties.js';
import { requireNumber } from '../errors/require-number.js';
import type { PanelSize } from '../layered/layer.js';

/** The largest value that the standard lets the factor take. */
const largestFactor = 2;

/**
 * Radiation factor of the vibration that a diffuse field forces upon a rectangular panel in a baffle.
 *
 * Equation: s = 0.5 (ln(k sqrt(l1 l2)) - L), L = -0.964 - (0.5 + l2/(pi l1)) ln(l2/l1) + 5 l2/(2 pi l1)
 * - 1/(4 pi l1 l2 k^2), l1 the longer and l2 the shorter side in m, k = 2 pi f/c; between 0 and 2.
 * Source: E.C. Sewell, J. Sound Vib. 12 (1970) 21; in this form ISO 12354-1:2017 and EN 12354-1:2000, Annex B (from
 * memory; held against the exact integral of `finiteRadiationFactor` over all directions, to which it is an expansion for
 * large k sqrt(l1 l2)).
 * Valid for k sqrt(l1 l2) above 1 and up to the ceiling; below that the formula turns round and is replaced by the low
 * limit of a rigid piston, k^2 l1 l2/(2 pi), where that is smaller.
 * Errors: ArgumentError for a frequency or a side that is not above 0.
 */
export function forcedRadiationFactor(hz: number, size: PanelSize, air: Air): number {
  requireNumber('frequency', hz, { above: 0, unit: 'Hz' });
  requireNumber('width of the panel', size.width, { above: 0, unit: 'metres' });
  requireNumber('height of the panel', size.height, { above: 0, unit: 'metres' });
  const k = (2 * Math.PI * hz) / air.soundSpeed;
  const long = Math.max(size.width, size.height);
  const short = Math.min(size.width, size.height);
  const shape = short / long;
  const phase = k * k * long * short;
  const lambda =
    -0.964 - (0.5 + shape / Math.PI) * Math.log(shape) + (5 * shape) / (2 * Math.PI) - 1 / (4 * Math.PI * phase);
  const formula = 0.5 * (0.5 * Math.log(phase) - lambda);
  const piston = phase / (2 * Math.PI);
  const factor = phase < 1 ? Math.min(formula, piston) : formula;
  // Long strips at low frequency drive the expansion below 0.
  return Math.min(largestFactor, factor > 0 ? factor : piston);
}
