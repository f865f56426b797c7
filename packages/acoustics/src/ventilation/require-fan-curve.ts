import { ArgumentError } from '../errors/argument-error.js';
import { requireNumber } from '../errors/require-number.js';
import type { FanPoint } from './fan-point.js';

/** Rejects a curve of fewer than two points, of flows that don't rise, or of a quantity that can't be. */
export function requireFanCurve(curve: readonly FanPoint[]): void {
  if (curve.length < 2) throw new ArgumentError('number of points of the fan curve', curve.length, '2 or more');
  curve.forEach(({ flow, pressure }, index) => {
    requireNumber(`airflow of point ${index + 1} of the fan curve`, flow, { atLeast: 0 });
    requireNumber(`pressure of point ${index + 1} of the fan curve`, pressure, { atLeast: 0 });
    if (index > 0) {
      requireNumber(`airflow of point ${index + 1} of the fan curve`, flow, { above: curve[index - 1]!.flow });
    }
  });
}
