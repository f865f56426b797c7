import { requireNumber } from '../errors/require-number.js';

/**
 * Airflow that holds the carbon dioxide at a limit in the long run, m3/s; null when the supply air is at the limit
 * already and no flow can.
 *
 * Equation: Q = G / (C_x - C_s). Units: generation m3/s, concentrations ppm; result m3/s.
 * Source: `steadyCo2` solved for the airflow.
 * Errors: ArgumentError for a quantity that can't be.
 *
 * @example
 * ```ts
 * import { flowForCo2 } from '@boothwright/acoustics/ventilation';
 *
 * flowForCo2({ limit: 1000, supply: 450, generation: 5e-6 }); // 0.00909
 * ```
 */
export function flowForCo2({
  limit,
  supply,
  generation,
}: {
  readonly limit: number;
  readonly supply: number;
  readonly generation: number;
}): number | null {
  requireNumber('CO2 limit', limit, { atLeast: 0, unit: 'ppm' });
  requireNumber('CO2 of the supply air', supply, { atLeast: 0, unit: 'ppm' });
  requireNumber('CO2 generation', generation, { atLeast: 0, unit: 'cubic metres per second' });
  if (generation === 0) return 0;
  return limit <= supply ? null : (1e6 * generation) / (limit - supply);
}
