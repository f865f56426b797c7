import type { Air } from '../air/air-properties.js';
import { requirePositive } from '../rooms/require-positive.js';
import type { DuctLoss } from './duct-loss.js';
import { ductOctaves, validityOf } from './duct-tables.js';
import { octaveLossesToThirds } from './octave-losses-to-thirds.js';

export type DuctBend = {
  /** Free width in the plane of the turn, m. */
  readonly width: number;
  readonly lined: boolean;
  /** A mitred right angle, one with turning vanes, or a round bend. */
  readonly form: 'square' | 'square-with-vanes' | 'round';
};

/** Limits of width over wavelength between the columns of the table. */
const limits = [0.14, 0.28, 0.55, 1.11, 2.22];
/** Losses in dB. Source: as in `ductBendLoss`. */
const table = {
  square: { unlined: [0, 1, 5, 8, 4, 3], lined: [0, 1, 6, 11, 10, 10] },
  'square-with-vanes': { unlined: [0, 1, 4, 6, 4, 4], lined: [0, 1, 4, 7, 7, 7] },
  round: { unlined: [0, 1, 2, 3, 3, 3], lined: null },
} as const;

/**
 * Loss of a right-angle bend in a duct.
 *
 * Rule: each octave, 63 Hz to 8 kHz, takes the whole-decibel value of the table column that its width over wavelength
 * falls in; thirds come from `octaveLossesToThirds`.
 * Units: width m; result dB in 21 thirds.
 * Source: D. A. Bies, C. H. Hansen and C. Q. Howard, Engineering Noise Control, 5th ed., 2017, Table 8.11, and M. Long,
 * Architectural Acoustics, 2nd ed., 2014, Tables 14.5 to 14.7 (as transcribed).
 * Valid: for one bend with a straight run before and after it. The lined rows suppose a lining on both sides of the turn
 * for about two widths (from memory). Bends that follow each other within a width or two interact, so the sum of their
 * losses is then an upper bound. A lined round bend isn't in the table: it takes the unlined row, with a note.
 * Errors: RangeError for a width that can't be.
 */
export function ductBendLoss({ width, lined, form }: DuctBend, air: Air): DuctLoss {
  requirePositive('duct width', width);
  const rows = table[form];
  if (!rows) throw new RangeError(`bend is "${String(form)}", expected square, square-with-vanes or round`);
  const row = (lined ? rows.lined : null) ?? rows.unlined;
  const notes = lined && rows.lined === null ? ['no figures for a lined round bend, the unlined ones are used'] : [];
  const octaves = ductOctaves.map((_, band) => {
    const ratio = (width * 10 ** (1.8 + 0.3 * band)) / air.soundSpeed;
    const column = limits.filter((limit) => ratio >= limit).length;
    return row[column]!;
  });
  return { loss: octaveLossesToThirds(octaves), validity: validityOf(notes, []) };
}
