import { requireNumber } from '../errors/require-number.js';
import type { FanPoint } from './fan-point.js';
import { requireFanCurve } from './require-fan-curve.js';

/**
 * Curve of a fan that turns at another speed.
 *
 * Equation: Q = Q_0 n/n_0, p = p_0 (n/n_0)^2. Units: m3/s, Pa; `speedRatio` n/n_0, above 0.
 * Source: fan laws, printed in makers' literature alike (common practice). Valid: the same fan in the same air, from about half
 * speed up; a motor that is choked by a dimmer may turn slower than its knob says.
 * Errors: ArgumentError for a curve or a ratio that can't be.
 *
 * @example
 * ```ts
 * import { fanCurveAtSpeed } from '@boothwright/acoustics/ventilation';
 *
 * const fan = [
 *   { flow: 0, pressure: 120 },
 *   { flow: 0.04, pressure: 0 },
 * ];
 * fanCurveAtSpeed(fan, 0.5); // [{ flow: 0, pressure: 30 }, { flow: 0.02, pressure: 0 }]
 * ```
 */
export function fanCurveAtSpeed(curve: readonly FanPoint[], speedRatio: number): FanPoint[] {
  requireFanCurve(curve);
  requireNumber('speed ratio of the fan', speedRatio, { above: 0 });
  return curve.map(({ flow, pressure }) => ({ flow: flow * speedRatio, pressure: pressure * speedRatio ** 2 }));
}
