import { requireNotNegative } from '../rooms/require-positive.js';

/**
 * Airflow that holds the carbon dioxide at a limit in the long run, m3/s; null when the supply air is at the limit
 * already and no flow can.
 *
 * Equation: Q = G / (C_x - C_s). Units: generation m3/s, concentrations ppm; result m3/s.
 * Source: `steadyCo2` solved for the airflow.
 * Errors: RangeError for a quantity that can't be.
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
  requireNotNegative('CO2 limit', limit);
  requireNotNegative('CO2 of the supply air', supply);
  requireNotNegative('CO2 generation', generation);
  if (generation === 0) return 0;
  return limit <= supply ? null : (1e6 * generation) / (limit - supply);
}
