import { requireAbsorption } from './require-absorption.js';

/** A mean of absorption coefficients, as rated and before rounding. */
export type AverageAbsorption = {
  readonly value: number;
  /** The mean before rounding. */
  readonly mean: number;
};

/**
 * Noise reduction coefficient (NRC).
 *
 * Rule: the mean of the coefficients at 250, 500, 1000 and 2000 Hz, rounded to the nearest 0.05, a half up.
 * Units: dimensionless; the 21 thirds of the working grid, or the four values.
 * Source: ASTM C423, as quoted in a public page with its rounding example.
 * Valid: for reverberation-room coefficients, which can exceed 1.
 * Errors: ArgumentError for a wrong number of bands or a coefficient that is negative, above 1.5 (as percent
 * would be) or no number.
 */
export function noiseReductionCoefficient(absorption: readonly number[]): AverageAbsorption {
  requireAbsorption(absorption, [21, 4]);
  const used = absorption.length === 21 ? [7, 10, 13, 16].map((index) => absorption[index]!) : absorption;
  const mean = used.reduce((sum, value) => sum + value, 0) / 4;
  return { value: Math.floor(20 * mean + 0.5 + 1e-9) / 20, mean };
}

/**
 * Sound absorption average (SAA).
 *
 * Rule: the mean of the twelve thirds from 200 Hz to 2.5 kHz, rounded to 0.01, a half up.
 * Units: dimensionless; the 21 thirds of the working grid, or the twelve values.
 * Source: ASTM C423, as quoted in a public page.
 * Valid: for reverberation-room coefficients, which can exceed 1.
 * Errors: ArgumentError for a wrong number of bands or a coefficient that is negative, above 1.5 (as percent
 * would be) or no number.
 */
export function soundAbsorptionAverage(absorption: readonly number[]): AverageAbsorption {
  requireAbsorption(absorption, [21, 12]);
  const used = absorption.length === 21 ? absorption.slice(6, 18) : absorption;
  const mean = used.reduce((sum, value) => sum + value, 0) / 12;
  return { value: Math.floor(100 * mean + 0.5 + 1e-9) / 100, mean };
}
