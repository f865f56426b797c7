import { requireNumber } from '../errors/require-number.js';
import { requireOneOf } from '../errors/require-one-of.js';

/** The weightings of a sound level meter: A, C, and Z for none. */
export type FrequencyWeighting = 'A' | 'C' | 'Z';

/** Their letters. */
export const frequencyWeightings: readonly FrequencyWeighting[] = ['A', 'C', 'Z'];

/** Pole frequencies of the analytic weighting curves, Hz. */
const f1 = 20.598997;
const f2 = 107.65265;
const f3 = 737.86223;
const f4 = 12_194.217;

/**
 * Gain of a frequency weighting relative to its gain at 1 kHz.
 *
 * Equations: C = 20 lg [f4^2 f^2 / ((f^2 + f1^2)(f^2 + f4^2))] - C(1000);
 * A = 20 lg [f4^2 f^4 / ((f^2 + f1^2) sqrt((f^2 + f2^2)(f^2 + f3^2)) (f^2 + f4^2))] - A(1000); Z = 0.
 * Units: frequency in Hz, weighting in dB.
 * Source: IEC 61672-1:2013, analytic expressions of annex E (pole frequencies from memory; with them every cell of
 * Table 3, as transcribed, is met within 0.05 dB).
 * Valid: 10 Hz to 20 kHz.
 * Errors: ArgumentError for a frequency that is not above zero or a letter that is no weighting.
 *
 * @example
 * ```ts
 * import { frequencyWeighting } from '@boothwright/acoustics/levels';
 *
 * frequencyWeighting('A', 100); // -19.1
 * frequencyWeighting('C', 1000); // 0
 * ```
 */
export function frequencyWeighting(kind: FrequencyWeighting, hz: number): number {
  requireNumber('frequency', hz, { above: 0, unit: 'Hz' });
  requireOneOf('frequency weighting', kind, frequencyWeightings);
  switch (kind) {
    case 'A':
      return response(hz, true) - response(1000, true);
    case 'C':
      return response(hz, false) - response(1000, false);
    case 'Z':
      return 0;
  }
}

function response(hz: number, isA: boolean): number {
  const square = hz * hz;
  const c = (f4 * f4 * square) / ((square + f1 * f1) * (square + f4 * f4));
  return 20 * Math.log10(isA ? (c * square) / Math.sqrt((square + f2 * f2) * (square + f3 * f3)) : c);
}
