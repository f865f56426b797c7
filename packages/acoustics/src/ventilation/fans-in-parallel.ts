import { ArgumentError } from '../errors/argument-error.js';
import { requireNumber } from '../errors/require-number.js';
import type { FanPoint } from './fan-point.js';
import { requireFanCurve } from './require-fan-curve.js';

/**
 * Curve of fans that blow side by side into the same space.
 *
 * Rule: at each pressure the airflows add; the curve spans the pressures that all of them have. Exact, as the corners of
 * all curves are kept. Above the pressure of the weakest at no flow, air would run back through it: nothing is said there.
 * Units: m3/s, Pa. Source: balance of flows (common practice).
 * Valid: curves that fall throughout; a dip lets fans in parallel hunt.
 * Errors: ArgumentError for a curve that can't be or doesn't fall throughout, no curve at all, or curves without a
 * pressure in common.
 *
 * @example
 * ```ts
 * import { fansInParallel } from '@boothwright/acoustics/ventilation';
 *
 * const fan = [
 *   { flow: 0, pressure: 60 },
 *   { flow: 0.04, pressure: 0 },
 * ];
 * fansInParallel([fan, fan])[1]?.flow; // 0.08
 * ```
 */
export function fansInParallel(curves: readonly (readonly FanPoint[])[]): FanPoint[] {
  if (curves.length === 0) throw new ArgumentError('number of fans', 0, '1 or more');
  for (const curve of curves) {
    requireFanCurve(curve);
    curve.forEach(({ pressure }, index) => {
      if (index === 0) return;
      requireNumber(`pressure of point ${index + 1} of the fan curve`, pressure, { below: curve[index - 1]!.pressure });
    });
  }
  const from = Math.max(...curves.map((curve) => curve[curve.length - 1]!.pressure));
  const to = Math.min(...curves.map((curve) => curve[0]!.pressure));
  if (!(to > from)) throw new ArgumentError('largest pressure in common', to, `a number above ${from}`);
  const pressures = new Set(curves.flat().map(({ pressure }) => pressure));
  return [...pressures]
    .filter((pressure) => pressure >= from && pressure <= to)
    .sort((a, b) => b - a)
    .map((pressure) => ({ flow: curves.reduce((sum, curve) => sum + flowAt(curve, pressure), 0), pressure }));
}

/** Airflow at which a falling curve has a pressure. */
function flowAt(curve: readonly FanPoint[], pressure: number): number {
  const below = Math.max(
    1,
    curve.findIndex((point) => point.pressure <= pressure),
  );
  const [from, to] = [curve[below - 1]!, curve[below]!];
  return from.flow + ((from.pressure - pressure) / (from.pressure - to.pressure)) * (to.flow - from.flow);
}
