import { ArgumentError } from '../errors/argument-error.js';
import { requireNumber } from '../errors/require-number.js';
import type { AbsorptionRow } from './absorption-row.js';

/** A curve between two measured ones. */
export type InterpolatedAbsorption = {
  readonly bandsHz: readonly number[];
  readonly values: readonly number[];
  /** Ids of the measured rows it lies between; one when the thickness itself was measured. */
  readonly between: readonly string[];
  /** False when the thickness itself was measured. */
  readonly interpolated: boolean;
};

/**
 * Absorption of a thickness in m between the measured ones of a series.
 *
 * Equation: linear in thickness, band by band, between the next thinner and the next thicker row.
 * Source: common practice. Valid inside the measured range alone: beyond it the error says which thicknesses were
 * measured, as a thicker layer can not be told from thinner ones.
 * Errors: ArgumentError for an unknown series, or a thickness outside the measured range.
 *
 * @example
 * ```ts
 * import { absorptionAtThickness, absorptionRows } from '@boothwright/acoustics/database';
 *
 * absorptionAtThickness(absorptionRows, 'bies-wool-16', 0.05).values; // [0.17, 0.45, 0.80, 0.89, 0.97, 0.94]
 * absorptionAtThickness(absorptionRows, 'bies-wool-16', 0.3); // throws thickness is 0.3
 * ```
 */
export function absorptionAtThickness(
  rows: readonly AbsorptionRow[],
  series: string,
  thickness: number,
): InterpolatedAbsorption {
  requireNumber('thickness', thickness, { above: 0, unit: 'metres' });
  const members = rows
    .filter((row) => row.series === series && row.thickness !== undefined)
    .sort((a, b) => a.thickness! - b.thickness!);
  if (members.length === 0) {
    const known = [...new Set(rows.flatMap((row) => row.series ?? []))];
    throw new ArgumentError('series', series, `one of ${known.join(', ')}`);
  }
  const upper = members.findIndex((row) => row.thickness! >= thickness - 1e-9);
  const thicker = members[upper];
  const same = thicker !== undefined && Math.abs(thicker.thickness! - thickness) <= 1e-9;
  if (thicker !== undefined && same) {
    return { bandsHz: thicker.bandsHz, values: thicker.values, between: [thicker.id], interpolated: false };
  }
  const thinner = members[upper - 1];
  if (thicker === undefined || thinner === undefined) {
    const [first, last] = [members[0]!.thickness!, members.at(-1)!.thickness!];
    throw new ArgumentError('thickness', thickness, `a number of metres inside the measured range ${first} to ${last}`);
  }
  const share = (thickness - thinner.thickness!) / (thicker.thickness! - thinner.thickness!);
  const bandsHz = thicker.bandsHz.filter((hz) => thinner.bandsHz.includes(hz));
  const valueAt = (row: AbsorptionRow, hz: number) => row.values[row.bandsHz.indexOf(hz)]!;
  return {
    bandsHz,
    values: bandsHz.map((hz) => valueAt(thinner, hz) + share * (valueAt(thicker, hz) - valueAt(thinner, hz))),
    between: [thinner.id, thicker.id],
    interpolated: true,
  };
}
