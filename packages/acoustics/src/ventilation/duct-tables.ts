import type { DuctValidity } from './duct-loss.js';

/** Octave bands of the published duct tables, nominal Hz. */
export const ductOctaves: readonly number[] = [63, 125, 250, 500, 1000, 2000, 4000, 8000];

/** Exact centres of those octaves, 10^(1.8 + 0.3 k) Hz; source as of `octaveBands`. */
export const exactDuctOctaves: readonly number[] = ductOctaves.map((_, octave) => 10 ** (1.8 + 0.3 * octave));

/** The largest loss that a lined duct is credited with, dB: beyond it sound goes round, through the duct walls. */
export const largestLinedDuctLoss = 40;

export const metresPerInch = 0.0254;
export const metresPerFoot = 0.3048;

/**
 * Validity from the remarks on inputs outside the range of the source, which make it an extrapolation, and from caveats
 * that hold inside the range as well.
 */
export function validityOf(outside: readonly string[], caveats: readonly string[]): DuctValidity {
  return { extrapolated: outside.length > 0, notes: [...outside, ...caveats] };
}
