import { ArgumentError } from '../errors/argument-error.js';
import type { FanPoint } from './fan-point.js';
import { fanPressure } from './fan-pressure.js';
import { requireFanCurve } from './require-fan-curve.js';

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
