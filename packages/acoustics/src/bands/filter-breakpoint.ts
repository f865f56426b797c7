import { requireNumber } from '../errors/require-number.js';
import { requireBandsPerOctave } from './mid-band-frequency.js';

/**
 * Frequency, relative to mid-band, at which a band filter's limits of attenuation change.
 *
 * Equation: 1 + (G^(1/(2b)) - 1) / (G^(1/2) - 1) (G^e - 1), G = 10^(3/10); the breakpoint below mid-band is its inverse.
 * Units: `octaves` e, the breakpoint of an octave filter in octaves from mid-band; `bandsPerOctave` b; result a ratio.
 * Source: IEC 61260-1:2014 (equation from memory; the five upper and five lower ratios of Table F.1 for b = 3, as
 * transcribed, are met to the last printed digit).
 * Errors: ArgumentError for a negative e or a b below 1.
 */
export function filterBreakpoint(octaves: number, bandsPerOctave: number): number {
  requireNumber('breakpoint in octaves', octaves, { atLeast: 0 });
  requireBandsPerOctave(bandsPerOctave);
  const half = (bands: number) => 10 ** (0.15 / bands) - 1;
  return 1 + (half(bandsPerOctave) / half(1)) * (10 ** (0.3 * octaves) - 1);
}
