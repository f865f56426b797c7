import { requireNumber } from '../errors/require-number.js';
import { type Co2Balance, requireCo2Balance } from './co2-balance.js';
import { requireConcentration } from './require-concentration.js';

/**
 * Carbon dioxide concentration after a time.
 *
 * Equation: C(t) = C_0 e^(-Q t/V) + (C_s + G/Q)(1 - e^(-Q t/V)); without airflow C(t) = C_0 + G t/V.
 * Units: time s, generation G and airflow Q m3/s, volume V m3, concentrations ppm by volume.
 * Source: mass balance of a well-mixed space, exact solution (common practice).
 * Valid: for constant generation and flow and complete mixing. A short circuit from supply to exhaust leaves the
 * performer with more than this, leaks and the opening of the door with less.
 * Errors: ArgumentError for a quantity that can't be, or a time after which there would be more carbon dioxide than air.
 *
 * @example
 * ```ts
 * import { co2Concentration } from '@boothwright/acoustics/ventilation';
 *
 * co2Concentration({ start: 450, supply: 450, generation: 5e-6, flow: 0.005, volume: 4, seconds: 600 }); // 978
 * ```
 */
export function co2Concentration({ seconds, ...balance }: Co2Balance & { readonly seconds: number }): number {
  requireCo2Balance(balance);
  requireNumber('time', seconds, { atLeast: 0, unit: 'seconds' });
  const { start, supply, generation, flow, volume } = balance;
  const exponent = (flow * seconds) / volume;
  const renewed = -Math.expm1(-exponent);
  // Where hardly any air has been renewed, (1 - e^-x)/x is 1, and no division by a vanishing flow is left.
  const produced = (1e6 * generation * seconds * (exponent === 0 ? 1 : renewed / exponent)) / volume;
  const reached = start + (supply - start) * renewed + produced;
  requireConcentration(`CO2 after ${seconds} s`, reached);
  return reached;
}
