import { requireNumber } from '../errors/require-number.js';
import { type Co2Balance, requireCo2Balance } from './co2-balance.js';
import { steadyCo2 } from './steady-co2.js';

/**
 * Time until the carbon dioxide rises to a threshold, s; zero when it starts there, null when it never gets there.
 *
 * Equation: t = (V/Q) ln((C_end - C_0)/(C_end - C_x)) with C_end = C_s + G/Q; without airflow t = V (C_x - C_0)/G.
 * Units: generation G and airflow Q m3/s, volume V m3, concentrations ppm; result s.
 * Source: `co2Concentration` solved for the time, exact.
 * Errors: ArgumentError for a quantity that can't be.
 */
export function co2TimeTo({ threshold, ...balance }: Co2Balance & { readonly threshold: number }): number | null {
  requireCo2Balance(balance);
  requireNumber('CO2 threshold', threshold, { atLeast: 0, unit: 'ppm' });
  const { start, generation, flow, volume } = balance;
  if (start >= threshold) return 0;
  const end = steadyCo2(balance);
  if (end === null) return generation === 0 ? null : ((threshold - start) * volume) / (1e6 * generation);
  if (end <= threshold) return null;
  return (-volume / flow) * Math.log1p(-(threshold - start) / (end - start));
}
