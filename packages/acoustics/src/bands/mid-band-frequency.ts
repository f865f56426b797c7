import { ArgumentError } from '../errors/argument-error.js';
import { requireNumber } from '../errors/require-number.js';

/**
 * Exact mid-band frequency of a fractional-octave band.
 *
 * Equation: f_m = 1000 G^(x/b) for an odd number b of bands per octave, 1000 G^((2x + 1)/(2b)) for an even one, with
 * G = 10^(3/10).
 * Units: `index` x counts bands from the one at, or just above, 1 kHz; `bandsPerOctave` b; result Hz.
 * Source: IEC 61260-1:2014, base-ten system (the rule for odd b as transcribed, that for even b from memory).
 * Errors: ArgumentError for a number that is not whole, or a b below 1.
 */
export function midBandFrequency(index: number, bandsPerOctave: number): number {
  if (!Number.isInteger(index)) throw new ArgumentError('band index', index, 'a whole number');
  requireBandsPerOctave(bandsPerOctave);
  const steps = bandsPerOctave % 2 === 1 ? index / bandsPerOctave : (2 * index + 1) / (2 * bandsPerOctave);
  return 1000 * 10 ** (0.3 * steps);
}

/**
 * Edges of a fractional-octave band.
 *
 * Equation: f_m G^(-1/(2b)) and f_m G^(1/(2b)), with G = 10^(3/10).
 * Units: Hz in, Hz out; `bandsPerOctave` b.
 * Source: IEC 61260-1:2014 (as transcribed; the printed page was not opened).
 * Errors: ArgumentError for a frequency not above zero, or a b that is no whole number of 1 or more.
 */
export function bandEdges(midBand: number, bandsPerOctave: number): { readonly lower: number; readonly upper: number } {
  requireNumber('mid-band frequency', midBand, { above: 0, unit: 'Hz' });
  requireBandsPerOctave(bandsPerOctave);
  const half = 10 ** (0.15 / bandsPerOctave);
  return { lower: midBand / half, upper: midBand * half };
}

/** Rejects a number of bands per octave that names no filter set. */
export function requireBandsPerOctave(bandsPerOctave: number): void {
  if (!Number.isInteger(bandsPerOctave) || bandsPerOctave < 1) {
    throw new ArgumentError('number of bands per octave', bandsPerOctave, 'a whole number of 1 or more');
  }
}
