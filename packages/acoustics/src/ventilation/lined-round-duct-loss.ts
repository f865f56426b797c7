import { requireNumber } from '../errors/require-number.js';
import { asInsertionLoss } from '../quantities/insertion-loss.js';
import type { DuctLoss, DuctOctaveLoss } from './duct-loss.js';
import { largestLinedDuctLoss, metresPerFoot, metresPerInch, validityOf } from './duct-tables.js';
import { octaveLossesToThirds } from './octave-losses-to-thirds.js';

/** A straight round duct with a lining. */
export type RoundDuct = {
  /** Free diameter inside the lining, m. */
  readonly diameter: number;
  readonly length: number;
  /** Thickness of the fibrous lining, m; 0 for none. */
  readonly lining: number;
};

/**
 * Coefficients A to F by octave, 63 Hz to 8 kHz, M. Long, Architectural Acoustics, 2014, Table 14.3 (as transcribed);
 * they meet the printed table for 2 in of lining.
 */
const coefficients: readonly (readonly [number, number, number, number, number, number])[] = [
  [0.2825, 0.3447, -0.05251, -0.03837, 0.0009132, -8.294e-6],
  [0.5237, 0.2234, -0.004936, -0.02724, 0.0003377, -2.49e-6],
  [0.3652, 0.79, -0.1157, -0.01834, -0.0001211, 2.681e-6],
  [0.1333, 1.845, -0.3735, -0.01293, 0.00008624, -4.986e-6],
  [1.933, 0, 0, 0.06135, -0.003891, 3.934e-5],
  [2.73, 0, 0, -0.07341, 0.0004428, 1.006e-6],
  [2.8, 0, 0, -0.1467, 0.003404, -2.851e-5],
  [1.545, 0, 0, -0.05452, 0.00129, -1.318e-5],
];

/** Diameter, in, of the published table; lining, in, of the formula. */
const diameterRange = { from: 6, to: 24 };
const liningRange = { from: 1, to: 2 };

/**
 * Insertion loss of a round duct lined with fibre.
 *
 * Equation: IL = (A + B t + C t^2 + D d + E d^2 + F d^3) l by octave, at most 40 dB, t and d in inches, l in feet.
 * Units: all lengths in m; result dB in the 8 octaves 63 Hz to 8 kHz.
 * Source: M. Long, Architectural Acoustics, 2nd ed., 2014, equation 14.13 and Table 14.3, after Reynolds 1990 (as
 * transcribed); they meet the table "2 in fibre-lined round duct" of Minimizing Excessive Sound in Ventilation
 * System Design, application guide 125-1929, 2009, Table 21, cell by cell.
 * Valid: diameter 6 to 24 in (152 to 610 mm); lining 2 in (51 mm) confirmed, down to 1 in (25 mm) by the formula alone.
 * A narrower duct is held at 152 mm and a thicker lining at 51 mm, which lowers the loss; a wider duct is held at 610 mm,
 * where the polynomial ends; a note says so.
 * Errors: ArgumentError for a dimension that can't be.
 */
export function linedRoundDuctOctaveLoss(duct: RoundDuct): DuctOctaveLoss {
  const { octaves, validity } = uncapped(duct);
  return { octaves: asInsertionLoss(octaves.map((loss) => Math.min(loss, largestLinedDuctLoss))), validity };
}

/**
 * The loss of `linedRoundDuctOctaveLoss` in 21 thirds.
 *
 * Equation: interpolated by `octaveLossesToThirds` before the 40 dB are applied. Units, source, range and errors: as there.
 */
export function linedRoundDuctLoss(duct: RoundDuct): DuctLoss {
  const { octaves, validity } = uncapped(duct);
  const thirds = octaveLossesToThirds(octaves).map((loss) => Math.min(loss, largestLinedDuctLoss));
  return { loss: asInsertionLoss(thirds), validity };
}

function uncapped({ diameter, length, lining }: RoundDuct) {
  requireNumber('duct diameter', diameter, { above: 0, unit: 'metres' });
  requireNumber('duct length', length, { atLeast: 0, unit: 'metres' });
  requireNumber('duct lining', lining, { atLeast: 0, unit: 'metres' });
  const notes: string[] = [];
  const inches = diameter / metresPerInch;
  const thickness = lining / metresPerInch;
  if (inches < diameterRange.from * 0.98) notes.push('duct narrower than the table covers, loss taken at 152 mm');
  if (inches > diameterRange.to * 1.02) notes.push('duct wider than the table covers, loss taken at 610 mm, too high');
  if (thickness > liningRange.to * 1.02) notes.push('lining thicker than the table covers, loss taken at 51 mm');
  if (thickness < liningRange.from * 0.98 && lining > 0) {
    notes.push('lining thinner than the table covers, loss of 25 mm reduced in proportion to the thickness');
  }
  const caveats =
    lining > 0 && thickness < liningRange.to * 0.98
      ? ['for less than 51 mm of lining the coefficients could not be held against a printed table']
      : [];
  const used = Math.min(Math.max(inches, diameterRange.from), diameterRange.to);
  const t = Math.min(Math.max(thickness, liningRange.from), liningRange.to);
  const share = Math.min(1, thickness / liningRange.from);
  const octaves = coefficients.map(
    ([a, b, c, d, e, f]) =>
      (share * (a + b * t + c * t ** 2 + d * used + e * used ** 2 + f * used ** 3) * length) / metresPerFoot,
  );
  return { octaves, validity: validityOf(notes, caveats) };
}
