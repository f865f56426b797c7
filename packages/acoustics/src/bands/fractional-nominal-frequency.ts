import { requireNumber } from '../errors/require-number.js';

/**
 * Printed name of a band narrower than a third of an octave, from its exact mid-band frequency.
 *
 * Rule: rounded to three digits when the first digit is 1 to 4, to two digits when it is 5 to 9.
 * Units: Hz.
 * Source: IEC 61260-1:2014, annex E (rule from memory; both printed examples, as transcribed, are met).
 * Errors: ArgumentError for a frequency that is not above zero.
 */
export function fractionalNominalFrequency(midBand: number): number {
  requireNumber('mid-band frequency', midBand, { above: 0, unit: 'Hz' });
  const firstDigit = Number(midBand.toExponential(12)[0]);
  return Number(midBand.toPrecision(firstDigit < 5 ? 3 : 2));
}
