import { requireNumber } from '../errors/require-number.js';

/**
 * Carbon dioxide concentration that is reached in the long run; null without airflow, when there is none.
 *
 * Equation: C = C_s + G/Q. Units: generation and airflow m3/s, concentrations ppm.
 * Source: mass balance of a well-mixed space (common practice).
 * Errors: ArgumentError for a quantity that can't be.
 *
 * @example
 * ```ts
 * import { steadyCo2 } from '@boothwright/acoustics/ventilation';
 *
 * // One person gives off about 5 ml/s; 5 l/s of fresh air.
 * steadyCo2({ supply: 450, generation: 5e-6, flow: 0.005 }); // 1450
 * ```
 */
export function steadyCo2({
  supply,
  generation,
  flow,
}: {
  readonly supply: number;
  readonly generation: number;
  readonly flow: number;
}): number | null {
  requireNumber('CO2 of the supply air', supply, { atLeast: 0, unit: 'ppm' });
  requireNumber('CO2 generation', generation, { atLeast: 0, unit: 'cubic metres per second' });
  requireNumber('airflow', flow, { atLeast: 0, unit: 'cubic metres per second' });
  return flow === 0 ? null : supply + (1e6 * generation) / flow;
}
