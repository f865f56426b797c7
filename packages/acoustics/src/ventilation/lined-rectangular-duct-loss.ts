import { requireNumber } from '../errors/require-number.js';
import { asInsertionLoss } from '../quantities/insertion-loss.js';
import type { DuctLoss, DuctOctaveLoss } from './duct-loss.js';
import { largestLinedDuctLoss, metresPerFoot, metresPerInch, validityOf } from './duct-tables.js';
import { octaveLossesToThirds } from './octave-losses-to-thirds.js';

/** A straight rectangular duct with a lining. */
export type RectangularDuct = {
  /** Free width and height inside the lining, m. */
  readonly width: number;
  readonly height: number;
  readonly length: number;
  /** Thickness of the fibrous lining on all four sides, m; 0 for none. */
  readonly lining: number;
};

/** Constants of M. Long, Architectural Acoustics, 2014, Table 14.2, octaves 63 Hz to 8 kHz (as transcribed). */
const b = [0.0133, 0.0574, 0.271, 1.0147, 1.77, 1.392, 1.518, 1.581];
const c = [1.959, 1.41, 0.824, 0.5, 0.695, 0.802, 0.451, 0.219];
/** Exponents of the thickness, alike in two transcriptions; at 1 in they play no part. */
const d = [0.917, 0.941, 1.079, 1.087, 0, 0, 0, 0];

/** Perimeter over area, 1/ft, and lining thickness, in, that the published tables and examples span. */
const ratioRange = { from: 1.5, to: 12 };
const liningRange = { from: 1, to: 2 };

/**
 * Insertion loss of a rectangular duct lined with fibre on four sides.
 *
 * Equation: IL = B (P/S)^C t^D l by octave, at most 40 dB, with P/S in 1/ft, t in inches and l in feet.
 * Units: all lengths in m; result dB in the 8 octaves 63 Hz to 8 kHz.
 * Source: M. Long, Architectural Acoustics, 2nd ed., 2014, equation 14.12 and Table 14.2, after Reynolds 1990 (as
 * transcribed).
 * Valid: P/S from 1.5 to 12 per ft (5 to 39 per m) and 1 to 2 in (25 to 51 mm) of lining. Outside, an input is held at
 * the end of its range where that lowers the loss, and the formula is carried on where it doesn't; either way a note
 * says so. The natural attenuation of bare sheet metal, which tables add, is left out: a duct of board has little of it.
 * Errors: ArgumentError for a dimension that can't be.
 */
export function linedRectangularDuctOctaveLoss(duct: RectangularDuct): DuctOctaveLoss {
  const { octaves, validity } = uncapped(duct);
  return { octaves: asInsertionLoss(octaves.map((loss) => Math.min(loss, largestLinedDuctLoss))), validity };
}

/**
 * The loss of `linedRectangularDuctOctaveLoss` in 21 thirds.
 *
 * Equation: interpolated by `octaveLossesToThirds` before the 40 dB are applied. Units, source, range and errors: as there.
 *
 * @example
 * ```ts
 * import { linedRectangularDuctLoss } from '@boothwright/acoustics/ventilation';
 *
 * // At 1 kHz, the fourteenth third.
 * linedRectangularDuctLoss({ width: 0.15, height: 0.2, length: 1, lining: 0.025 }).loss[13]; // 22.3
 * ```
 */
export function linedRectangularDuctLoss(duct: RectangularDuct): DuctLoss {
  const { octaves, validity } = uncapped(duct);
  const thirds = octaveLossesToThirds(octaves).map((loss) => Math.min(loss, largestLinedDuctLoss));
  return { loss: asInsertionLoss(thirds), validity };
}

function uncapped({ width, height, length, lining }: RectangularDuct) {
  requireNumber('duct width', width, { above: 0, unit: 'metres' });
  requireNumber('duct height', height, { above: 0, unit: 'metres' });
  requireNumber('duct length', length, { atLeast: 0, unit: 'metres' });
  requireNumber('duct lining', lining, { atLeast: 0, unit: 'metres' });
  const notes: string[] = [];
  const ratio = ((2 * (width + height)) / (width * height)) * metresPerFoot;
  if (ratio > ratioRange.to) notes.push('duct narrower than the tables cover, loss taken at perimeter/area 39 per m');
  if (ratio < ratioRange.from) notes.push('duct wider than the tables cover, formula carried on');
  const thickness = lining / metresPerInch;
  // A lining of 25 mm is meant to be the 1 in of the tables.
  if (thickness > liningRange.to * 1.02) notes.push('lining thicker than the tables cover, loss taken at 51 mm');
  if (thickness < liningRange.from * 0.98 && lining > 0) {
    notes.push('lining thinner than the tables cover, loss of 25 mm reduced in proportion to the thickness');
  }
  const caveats =
    thickness > liningRange.from * 1.02
      ? ['below 1 kHz the gain from more than 25 mm of lining is uncertain, a published table shows up to half as much']
      : [];
  const usedRatio = Math.min(ratio, ratioRange.to);
  const usedThickness = Math.min(Math.max(thickness, liningRange.from), liningRange.to);
  // The high bands of the formula do not depend on the thickness, so a thin lining needs a rule of its own.
  const share = Math.min(1, thickness / liningRange.from);
  const octaves = b.map(
    (factor, band) => (share * factor * usedRatio ** c[band]! * usedThickness ** d[band]! * length) / metresPerFoot,
  );
  return { octaves, validity: validityOf(notes, caveats) };
}
