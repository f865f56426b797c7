import type { Air } from '../air/air-properties.js';
import { requireNumber } from '../errors/require-number.js';
import type { PanelSize } from '../layered/layer.js';

/** The largest value the standard lets the efficiency take. */
const largestEfficiency = 2;

/**
 * Radiation efficiency of the free bending waves of a simply supported rectangular plate in a baffle.
 *
 * Equations, with lengths l1, l2 in m, x = sqrt(f/fc), f11 = c^2/(4 fc) (1/l1^2 + 1/l2^2):
 * s1 = 1/sqrt(1 - fc/f), s2 = 4 l1 l2 (f/c)^2, s3 = sqrt(2 pi f (l1 + l2)/(16 c)).
 * If f11 <= fc/2: s1 from fc upwards; below it 2 (l1 + l2) c d1/(l1 l2 fc) + d2, with
 * d1 = [(1 - x^2) ln((1 + x)/(1 - x)) + 2 x]/(4 pi^2 (1 - x^2)^1.5) and
 * d2 = 8 c^2 (1 - 2 x^2)/(fc^2 pi^4 l1 l2 x sqrt(1 - x^2)) up to fc/2, and no more than s2 below f11.
 * If f11 > fc/2: s2 where f < fc and s2 < s3, s1 where f > fc and s1 < s3, else s3. Never above 2.
 * Units: f and fc in Hz, c in m/s; the result has no unit.
 * Source: ISO 12354-1:2017 and EN 12354-1:2000, Annex B (from memory).
 * Valid for plates with many modes in a band; an average over modes otherwise.
 * Errors: ArgumentError for a frequency or a length that isn't above 0.
 */
export function radiationEfficiency(hz: number, criticalHz: number, size: PanelSize, air: Air): number {
  requireNumber('frequency', hz, { above: 0, unit: 'Hz' });
  // A plate without stiffness has no critical frequency, and its free waves radiate nothing.
  if (criticalHz === Number.POSITIVE_INFINITY) return 0;
  requireNumber('critical frequency', criticalHz, { above: 0, unit: 'Hz' });
  requireNumber('panel width', size.width, { above: 0, unit: 'metres' });
  requireNumber('panel height', size.height, { above: 0, unit: 'metres' });
  const c = air.soundSpeed;
  const area = size.width * size.height;
  const halfPerimeter = size.width + size.height;
  const s1 = hz > criticalHz ? 1 / Math.sqrt(1 - criticalHz / hz) : Number.POSITIVE_INFINITY;
  const s2 = 4 * area * (hz / c) ** 2;
  const s3 = Math.sqrt((2 * Math.PI * hz * halfPerimeter) / (16 * c));
  const firstMode = (c ** 2 / (4 * criticalHz)) * (1 / size.width ** 2 + 1 / size.height ** 2);
  if (firstMode > criticalHz / 2) {
    if (hz < criticalHz && s2 < s3) return Math.min(s2, largestEfficiency);
    return Math.min(s1, s3, largestEfficiency);
  }
  if (hz >= criticalHz) return Math.min(s1, largestEfficiency);
  const x = Math.sqrt(hz / criticalHz);
  const rest = 1 - x * x;
  const edges = (rest * Math.log((1 + x) / (1 - x)) + 2 * x) / (4 * Math.PI ** 2 * rest ** 1.5);
  const corners =
    hz > criticalHz / 2
      ? 0
      : (8 * c ** 2 * (1 - 2 * x * x)) / (criticalHz ** 2 * Math.PI ** 4 * area * x * Math.sqrt(rest));
  const below = ((2 * halfPerimeter * c) / (area * criticalHz)) * edges + corners;
  return Math.min(hz < firstMode ? Math.min(below, s2) : below, largestEfficiency);
}
