import { requireNumber } from '../errors/require-number.js';
import { asInsertionLoss } from '../quantities/insertion-loss.js';
import type { DuctOctaveLoss } from './duct-loss.js';
import { metresPerFoot, metresPerInch, validityOf } from './duct-tables.js';

/** A straight, lined flexible duct. */
export type FlexibleDuct = {
  /** Free diameter, m. */
  readonly diameter: number;
  /** m */
  readonly length: number;
};

/** A printed row: diameter m, length m, dB in the octaves 63 Hz to 4 kHz. */
type FlexibleDuctRow = FlexibleDuct & { readonly losses: readonly number[] };

const row = (inches: number, feet: number, losses: readonly number[]): FlexibleDuctRow => ({
  diameter: inches * metresPerInch,
  length: feet * metresPerFoot,
  losses,
});

/** The rows that were read, of a larger table. Source: as in `flexibleDuctOctaveLoss`. */
const rows: readonly FlexibleDuctRow[] = [
  row(4, 3, [2, 3, 3, 8, 9, 11, 7]),
  row(8, 9, [6, 8, 16, 25, 28, 28, 18]),
  row(12, 6, [3, 5, 10, 15, 17, 16, 9]),
  row(16, 12, [2, 4, 9, 23, 28, 23, 9]),
];

/** Length beyond which no more loss is credited, m: the longest row. */
const longest = 12 * metresPerFoot;

/**
 * Loss of a straight, lined flexible duct.
 *
 * Rule: the printed row where diameter and length are those of a row, within 2 %. Elsewhere the losses per metre of the
 * two rows next in diameter, linear in the diameter and held at the ends, times the length, of which no more than the
 * longest printed counts; no loss is credited in the octave of 8 kHz, which isn't printed.
 * Units: m; result dB in the 8 octaves 63 Hz to 8 kHz.
 * Source: M. Long, Architectural Acoustics, 2nd ed., 2014, Table 14.4 (as transcribed), of which four rows were read; the
 * rule between them is our own choice. The same book's worked path, Table 14.9, has 4 to 11 dB more for 12 in of 6 ft.
 * Valid: 102 to 406 mm, 0.9 to 3.7 m, stretched and straight. Sharp or sagging bends take more air pressure and other
 * losses. Sound leaves through the thin wall: what is taken off at low frequency arrives where the duct passes.
 * Errors: ArgumentError for a dimension that can't be.
 */
export function flexibleDuctOctaveLoss({ diameter, length }: FlexibleDuct): DuctOctaveLoss {
  requireNumber('duct diameter', diameter, { above: 0, unit: 'metres' });
  requireNumber('duct length', length, { atLeast: 0, unit: 'metres' });
  const near = (value: number, printed: number) => Math.abs(value / printed - 1) < 0.02;
  const printed = rows.find((each) => near(diameter, each.diameter) && near(length, each.length));
  const caveats = ['the octave of 8 kHz is not in the table, no loss is credited there'];
  if (printed) return { octaves: asInsertionLoss([...printed.losses, 0]), validity: validityOf([], caveats) };
  const found = rows.findIndex((each) => each.diameter >= diameter);
  const upper = found === -1 ? rows.length - 1 : Math.max(1, found);
  const [from, to] = [rows[upper - 1]!, rows[upper]!];
  const share = Math.min(1, Math.max(0, (diameter - from.diameter) / (to.diameter - from.diameter)));
  const counted = Math.min(length, longest);
  const octaves = to.losses.map((loss, octave) => {
    const perMetre = (1 - share) * (from.losses[octave]! / from.length) + share * (loss / to.length);
    return perMetre * counted;
  });
  const outside = ['only four sizes of the table are known, the loss is carried over from the two next to this one'];
  return { octaves: asInsertionLoss([...octaves, 0]), validity: validityOf(outside, caveats) };
}
