import { requireBands } from '../bands/require-bands.js';
import { ArgumentError } from '../errors/argument-error.js';
import { requireAbsorption } from './require-absorption.js';

/** A weighted absorption coefficient, its shape indicators and its class. */
export type WeightedAbsorption = {
  readonly alphaW: number;
  /** Shape indicators: L, M and H, one after the other; empty when no band stands out. */
  readonly indicators: string;
  /** `0.60(M)`. */
  readonly text: string;
  /** Class A to E of ISO 11654 Annex B, from memory; null when not classified. */
  readonly absorptionClass: 'A' | 'B' | 'C' | 'D' | 'E' | null;
  /** Nominal Hz of the bands that the lists follow. */
  readonly bands: readonly number[];
  /** The shifted reference curve. */
  readonly contour: readonly number[];
  /** Unfavourable deviations: how far the practical coefficients stay below. */
  readonly deviations: readonly number[];
  readonly deviationSum: number;
  /** `sum` when the rule of 0.10 forbids the next higher curve, `reference` when the curve is at its highest. */
  readonly governedBy: 'sum' | 'reference';
};

/** All arithmetic is in steps of 0.05, so that a sum of exactly 0.10 is met exactly. */
const reference = [16, 20, 20, 20, 18];
const largestSum = 2;
const standsOut = 5;
const octaves = [250, 500, 1000, 2000, 4000];

/**
 * Practical absorption coefficients in octaves from thirds.
 *
 * Rule: the mean of the three thirds, rounded to the nearest 0.05, a half up, and at most 1.00.
 * Units: dimensionless; 18 thirds from 100 Hz to 5 kHz or the 21 of the working grid in, 6 octaves from 125 Hz to 4 kHz out.
 * Source: ISO 11654:1997 clause 4.1 (as transcribed; the printed page was not opened).
 * Errors: ArgumentError for a wrong number of bands or a coefficient that is negative or no number.
 */
export function practicalAbsorption(absorption: readonly number[]): number[] {
  requireAbsorption(absorption, [21, 18]);
  const thirds = absorption.slice(absorption.length - 18);
  return [0, 3, 6, 9, 12, 15].map((first) => {
    const mean = (thirds[first]! + thirds[first + 1]! + thirds[first + 2]!) / 3;
    return Math.min(20, Math.floor(20 * mean + 0.5 + 1e-9)) / 20;
  });
}

/**
 * Weighted absorption coefficient alpha_w with its shape indicators.
 *
 * Rule: the reference curve 0.80, 1.00, 1.00, 1.00, 0.90 goes down in steps of 0.05 until the unfavourable deviations sum
 * to 0.10 or less; alpha_w is its value at 500 Hz. L (250 Hz), M (500 and 1000 Hz) or H (2 and 4 kHz) is added where a
 * practical coefficient exceeds the shifted curve by 0.25 or more.
 * Units: dimensionless; practical coefficients of the five octaves from 250 Hz to 4 kHz, in steps of 0.05.
 * Source: ISO 11654:1997 clauses 4.1 to 4.3 (as transcribed; the printed page was not opened).
 * Valid: for flat absorbers; not for single objects, and not for what happens below 180 Hz.
 * Errors: ArgumentError for a wrong number of bands or a value that is no multiple of 0.05 from 0 to 1.
 */
export function weightedAbsorption(practical: readonly number[]): WeightedAbsorption {
  requireBands('practical absorption coefficient', practical, [5], {});
  const steps = practical.map((value, index) => {
    const step = Math.round(20 * value);
    if (Math.abs(20 * value - step) > 1e-6 || step < 0 || step > 20) {
      const argument = `practical absorption coefficient at ${octaves[index]} Hz`;
      throw new ArgumentError(argument, value, 'a multiple of 0.05 from 0 to 1');
    }
    return step;
  });
  const against = (down: number) => {
    const deviations = steps.map((value, index) => Math.max(0, reference[index]! - down - value));
    return { deviations, sum: deviations.reduce((total, value) => total + value, 0) };
  };
  let down = 0;
  let fit = against(down);
  while (fit.sum > largestSum) fit = against(++down);

  const exceeds = (index: number) => steps[index]! - Math.max(0, reference[index]! - down) >= standsOut;
  const low = exceeds(0) ? 'L' : '';
  const middle = exceeds(1) || exceeds(2) ? 'M' : '';
  const high = exceeds(3) || exceeds(4) ? 'H' : '';
  const indicators = low + middle + high;
  const alphaW = (20 - down) / 20;
  return {
    alphaW,
    indicators,
    text: indicators === '' ? alphaW.toFixed(2) : `${alphaW.toFixed(2)}(${indicators})`,
    absorptionClass: classOf(20 - down),
    bands: octaves,
    contour: reference.map((value) => Math.max(0, value - down) / 20),
    deviations: fit.deviations.map((value) => value / 20),
    deviationSum: fit.sum / 20,
    governedBy: down === 0 ? 'reference' : 'sum',
  };
}

function classOf(step: number): WeightedAbsorption['absorptionClass'] {
  if (step >= 18) return 'A';
  if (step >= 16) return 'B';
  if (step >= 12) return 'C';
  if (step >= 6) return 'D';
  return step >= 3 ? 'E' : null;
}
