import { requireNumber } from '../errors/require-number.js';
import type { FanPoint } from './fan-point.js';
import { requireFanCurve } from './require-fan-curve.js';

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
