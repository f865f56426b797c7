import { ArgumentError } from '../errors/argument-error.js';

const mantissas = [1, 1.25, 1.6, 2, 2.5, 3.15, 4, 5, 6.3, 8];

/**
 * Printed name of a third-octave band, counted in bands from 1 kHz: -13 is 50 Hz, 9 is 8 kHz.
 *
 * Equation: the preferred numbers 1, 1.25, 1.6, 2, 2.5, 3.15, 4, 5, 6.3, 8 in each decade.
 * Units: whole number of bands in, Hz out. Every third of these names, 0, 3, -3 and so on, is that of an octave band.
 * Source: IEC 61260-1:2014, annex on nominal frequencies (the series from memory; 16 Hz to 10 kHz as transcribed).
 * Valid: -30 (1 Hz) to 16 (40 kHz).
 * Errors: ArgumentError outside that range.
 */
export function nominalFrequency(bandsFrom1kHz: number): number {
  if (!Number.isInteger(bandsFrom1kHz) || bandsFrom1kHz < -30 || bandsFrom1kHz > 16) {
    throw new ArgumentError('number of bands from 1 kHz', bandsFrom1kHz, 'a whole number from -30 to 16');
  }
  const decade = Math.floor(bandsFrom1kHz / 10);
  const name = mantissas[bandsFrom1kHz - 10 * decade]! * 10 ** (3 + decade);
  // Three digits are all that a name has; more is dust of the binary product.
  return Number(name.toPrecision(3));
}
