import { requireNumber } from '../errors/require-number.js';

/** Litres of gas a second, K and kPa cleared, of 1 MJ a day of metabolism. Source: as in `co2OfMetabolism`. */
const gasOfMetabolism = 0.000211;

/** What a body does with its energy, and the air that its breath is counted in. */
export type Metabolism = {
  /** Basal metabolic rate, MJ/day: what the body takes at rest. */
  readonly basalRate: number;
  /** How much more it takes, met: 1 at rest. */
  readonly activity: number;
  /** Carbon dioxide given off over oxygen taken up, about 0.85. */
  readonly respiratoryQuotient: number;
  /** degC and kPa of the air in which the gas is counted. */
  readonly temperature: number;
  readonly pressure: number;
};

/**
 * Carbon dioxide given off by one person from the energy that the body uses, m3/s.
 *
 * Equation: V = RQ BMR M (T/P) 0.000211 L/s. Units: as of `Metabolism`, T in K.
 * Source: A. Persily and L. de Jonge, Indoor Air 27, 2017, 868-879 (the equation from memory; it gives the rates of
 * their Table 4, read in a transcription, within the rounding of the table).
 * Valid: adults and children of usual build; a person differs from the mean by a quarter and more.
 * Errors: ArgumentError for a quantity that can't be.
 *
 * @example
 * ```ts
 * import { co2OfMetabolism } from '@boothwright/acoustics/ventilation';
 *
 * // A man of 21 to 30 years and 85 kg at 1.4 met: 20 L/h.
 * const man = { basalRate: 8.24, activity: 1.4, respiratoryQuotient: 0.85, temperature: 0, pressure: 101.325 };
 * co2OfMetabolism(man) * 3.6e6; // 20.1
 * ```
 */
export function co2OfMetabolism(metabolism: Metabolism): number {
  const { basalRate, activity, respiratoryQuotient, temperature, pressure } = metabolism;
  requireNumber('basal metabolic rate', basalRate, { above: 0 });
  requireNumber('activity', activity, { above: 0, unit: 'met' });
  requireNumber('respiratory quotient', respiratoryQuotient, { above: 0, atMost: 1.5 });
  requireNumber('temperature', temperature, { atLeast: -70, atMost: 100, unit: 'degC' });
  requireNumber('pressure of the air', pressure, { above: 0, unit: 'kPa' });
  return 1e-3 * respiratoryQuotient * basalRate * activity * ((temperature + 273.15) / pressure) * gasOfMetabolism;
}
