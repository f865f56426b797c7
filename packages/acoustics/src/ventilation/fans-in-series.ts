import { ArgumentError } from '../errors/argument-error.js';
import type { FanPoint } from './fan-point.js';
import { fanPressure } from './fan-pressure.js';
import { requireFanCurve } from './require-fan-curve.js';

/**
 * Curve of fans that blow one after the other.
 *
 * Rule: at each airflow the pressures add; the curve spans the flows that all of them have. Exact, as the corners of all
 * curves are kept. Units: m3/s, Pa. Source: balance of pressures (common practice).
 * Valid: fans far enough apart not to disturb each other; less is gained where they are close.
 * Errors: ArgumentError for a curve that can't be, no curve at all, or curves without a flow in common.
 *
 * @example
 * ```ts
 * import { fansInSeries } from '@boothwright/acoustics/ventilation';
 *
 * const fan = [
 *   { flow: 0, pressure: 60 },
 *   { flow: 0.04, pressure: 0 },
 * ];
 * fansInSeries([fan, fan])[0]?.pressure; // 120
 * ```
 */
export function fansInSeries(curves: readonly (readonly FanPoint[])[]): FanPoint[] {
  if (curves.length === 0) throw new ArgumentError('number of fans', 0, '1 or more');
  for (const curve of curves) requireFanCurve(curve);
  const from = Math.max(...curves.map((curve) => curve[0]!.flow));
  const to = Math.min(...curves.map((curve) => curve[curve.length - 1]!.flow));
  if (!(to > from)) throw new ArgumentError('largest airflow in common', to, `a number above ${from}`);
  const flows = new Set(curves.flat().map(({ flow }) => flow));
  return [...flows]
    .filter((flow) => flow >= from && flow <= to)
    .sort((a, b) => a - b)
    .map((flow) => ({ flow, pressure: curves.reduce((sum, curve) => sum + fanPressure(curve, flow), 0) }));
}
