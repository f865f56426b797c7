import { ArgumentError } from '../errors/argument-error.js';
import { requireNumber } from '../errors/require-number.js';

/** A point of a fan's curve: airflow m3/s, pressure Pa. */
export type FanPoint = { readonly flow: number; readonly pressure: number };

/**
 * Pressure of a fan at an airflow, Pa, between the points of its curve.
 *
 * Equation: linear between neighbours, so that a falling curve falls everywhere. Units: m3/s, Pa.
 * Source: interpolation is our own choice. Valid: inside the curve only; nothing is carried on beyond its ends.
 * Errors: ArgumentError for fewer than two points, flows that don't rise, or an airflow outside the curve.
 */
export function fanPressure(curve: readonly FanPoint[], flow: number): number {
  requireFanCurve(curve);
  requireNumber('airflow', flow, { atLeast: curve[0]!.flow, atMost: curve[curve.length - 1]!.flow });
  const above = Math.max(
    1,
    curve.findIndex((point) => point.flow >= flow),
  );
  const [from, to] = [curve[above - 1]!, curve[above]!];
  return from.pressure + ((flow - from.flow) / (to.flow - from.flow)) * (to.pressure - from.pressure);
}

/**
 * Airflow and pressure at which a fan works on a system.
 *
 * Rule: where the fan's curve crosses the system's from above; the crossing with most flow when there are several.
 * Units: `systemPressure` gives Pa for m3/s. Source: balance of pressures, by bisection (common practice).
 * Errors: ArgumentError for a curve that can't be, or when the two never cross within the curve.
 */
export function fanOperatingPoint(curve: readonly FanPoint[], systemPressure: (flow: number) => number): FanPoint {
  requireFanCurve(curve);
  const excess = (flow: number) => fanPressure(curve, flow) - systemPressure(flow);
  for (let index = curve.length - 1; index > 0; index--) {
    let low = curve[index - 1]!.flow;
    let high = curve[index]!.flow;
    if (!(excess(low) >= 0 && excess(high) <= 0)) continue;
    for (let step = 0; step < 80; step++) {
      const middle = (low + high) / 2;
      if (excess(middle) >= 0) low = middle;
      else high = middle;
    }
    return { flow: low, pressure: fanPressure(curve, low) };
  }
  throw new ArgumentError('system', 'never met by the fan', 'a system curve that crosses the curve of the fan');
}

function requireFanCurve(curve: readonly FanPoint[]): void {
  if (curve.length < 2) throw new ArgumentError('number of points of the fan curve', curve.length, '2 or more');
  curve.forEach(({ flow, pressure }, index) => {
    requireNumber(`airflow of point ${index + 1} of the fan curve`, flow, { atLeast: 0 });
    requireNumber(`pressure of point ${index + 1} of the fan curve`, pressure, { atLeast: 0 });
    if (index > 0) {
      requireNumber(`airflow of point ${index + 1} of the fan curve`, flow, { above: curve[index - 1]!.flow });
    }
  });
}
