import type { Air } from '../air/air-properties.js';
import { ArgumentError } from '../errors/argument-error.js';
import { requireNumber } from '../errors/require-number.js';
import { asInsertionLoss } from '../quantities/insertion-loss.js';
import type { DuctLoss, DuctOctaveLoss } from './duct-loss.js';
import { exactDuctOctaves, validityOf } from './duct-tables.js';
import { octaveDuctLossInThirds } from './octave-duct-loss-in-thirds.js';

/** A bend of a duct. */
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
 * falls in.
 * Units: width m; result dB in the 8 octaves.
 * Source: D. A. Bies, C. H. Hansen and C. Q. Howard, Engineering Noise Control, 5th ed., 2017, Table 8.11, and M. Long,
 * Architectural Acoustics, 2nd ed., 2014, Tables 14.5 to 14.7 (as transcribed).
 * Valid: for one bend with a straight run before and after it. The lined rows suppose a lining on both sides of the turn
 * for about two widths (from memory). Bends that follow each other within a width or two interact, so the sum of their
 * losses is then an upper bound. A lined round bend isn't in the table: it takes the unlined row, with a note.
 * Errors: ArgumentError for a width that can't be or a form that is not known.
 */
export function ductBendOctaveLoss({ width, lined, form }: DuctBend, air: Air): DuctOctaveLoss {
  requireNumber('duct width', width, { above: 0, unit: 'metres' });
  const rows = table[form];
  if (!rows) throw new ArgumentError('bend', `"${String(form)}"`, 'square, square-with-vanes or round');
  const row = (lined ? rows.lined : null) ?? rows.unlined;
  const notes = lined && rows.lined === null ? ['no figures for a lined round bend, the unlined ones are used'] : [];
  const octaves = exactDuctOctaves.map((hz) => {
    const ratio = (width * hz) / air.soundSpeed;
    const column = limits.filter((limit) => ratio >= limit).length;
    return row[column]!;
  });
  return { octaves: asInsertionLoss(octaves), validity: validityOf(notes, []) };
}

/** The loss of `ductBendOctaveLoss` in 21 thirds, by `octaveDuctLossInThirds`; units, source, range and errors as there. */
export function ductBendLoss(bend: DuctBend, air: Air): DuctLoss {
  return octaveDuctLossInThirds(ductBendOctaveLoss(bend, air));
}
