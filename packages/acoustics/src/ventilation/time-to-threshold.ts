import { requireNumber } from '../errors/require-number.js';

/**
 * First time at which a quantity gets to a threshold, from below or from above, s; null when it doesn't within the
 * horizon.
 *
 * Rule: steps of the resolution until the threshold is passed, then bisection; 0 when it starts there.
 * Units: s; `valueAt` gives the quantity at a time, as one zone of `zoneTemperatures` does.
 * Source: our own. Valid: a passing and coming back that both fall within one step are missed.
 * Errors: ArgumentError for a threshold, horizon or resolution that can't be, or a value that is no number.
 *
 * @example
 * ```ts
 * import { timeToThreshold, zoneConcentrations } from '@boothwright/acoustics/ventilation';
 *
 * const zones = { volumes: [4], between: [[0]], fromOutside: [0.005] };
 * const load = { outside: 450, generation: [5e-6] };
 * const valueAt = (seconds: number) => zoneConcentrations(zones, load, [450], seconds)[0]!;
 * timeToThreshold(valueAt, 1000, { horizon: 7200, resolution: 60 }); // 639
 * ```
 */
export function timeToThreshold(
  valueAt: (seconds: number) => number,
  threshold: number,
  { horizon, resolution }: { readonly horizon: number; readonly resolution: number },
): number | null {
  requireNumber('threshold', threshold);
  requireNumber('horizon', horizon, { above: 0, unit: 'seconds' });
  requireNumber('resolution', resolution, { above: 0, unit: 'seconds' });
  const distance = (seconds: number) => {
    const value = valueAt(seconds);
    requireNumber(`value after ${seconds} s`, value);
    return value - threshold;
  };
  const first = distance(0);
  if (first === 0) return 0;
  const passed = (seconds: number) => distance(seconds) * Math.sign(first) <= 0;
  const steps = Math.ceil(horizon / resolution);
  for (let step = 1; step <= steps; step++) {
    let high = Math.min(horizon, step * resolution);
    if (!passed(high)) continue;
    let low = (step - 1) * resolution;
    for (let halving = 0; halving < 60; halving++) {
      const middle = (low + high) / 2;
      if (passed(middle)) high = middle;
      else low = middle;
    }
    return high;
  }
  return null;
}
