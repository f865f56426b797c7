import type { DuctValidity } from './duct-loss.js';

/** Octave bands of the published duct tables, nominal Hz. */
export const ductOctaves: readonly number[] = [63, 125, 250, 500, 1000, 2000, 4000, 8000];

/** The largest loss that a lined duct is credited with, dB: beyond it sound goes round, through the duct walls. */
export const largestLinedDuctLoss = 40;

export const metresPerInch = 0.0254;
export const metresPerFoot = 0.3048;

/** Validity without a remark, or with one remark for each departure from the range of the source. */
export function validityOf(notes: readonly string[]): DuctValidity {
  return { extrapolated: notes.length > 0, notes };
}
