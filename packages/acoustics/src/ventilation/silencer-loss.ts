import { ArgumentError } from '../errors/argument-error.js';
import { requireNumber } from '../errors/require-number.js';
import { asInsertionLoss, type InsertionLoss } from '../quantities/insertion-loss.js';
import type { SilencerRow } from './silencer-row.js';

/**
 * Insertion loss of a splitter silencer from measured rows, dB in the bands of the rows.
 *
 * Rule: rows of the same airway and splitter (within 1 mm); between two lengths linear in the length, band by band.
 * Nothing is carried on beyond the shortest and the longest row: a silencer's loss isn't in proportion to its length.
 * Units: m; result dB. Source: of the rows, as `silencerRows` states it; the interpolation is our own choice.
 * Valid: no flow. Air that flows with the sound takes up to a few decibels off and makes noise of its own.
 * Errors: ArgumentError when no row has the airway and splitter, for rows with different bands, or for a length outside
 * the rows.
 *
 * @example
 * ```ts
 * import { silencerLoss, silencerRows } from '@boothwright/acoustics/ventilation';
 *
 * const loss = silencerLoss(silencerRows, { airway: 0.1, splitter: 0.2, length: 0.9 });
 * // 500 Hz.
 * loss[10]; // 23.5
 * ```
 */
export function silencerLoss(
  rows: readonly SilencerRow[],
  { airway, splitter, length }: Pick<SilencerRow, 'airway' | 'splitter' | 'length'>,
): InsertionLoss {
  requireNumber('airway of the silencer', airway, { above: 0, unit: 'metres' });
  requireNumber('splitter of the silencer', splitter, { above: 0, unit: 'metres' });
  for (const row of rows) {
    requireNumber(`airway of the row ${row.id}`, row.airway, { above: 0 });
    requireNumber(`splitter of the row ${row.id}`, row.splitter, { above: 0 });
    requireNumber(`length of the row ${row.id}`, row.length, { above: 0 });
  }
  const alike = rows
    .filter((row) => Math.abs(row.airway - airway) < 0.001 && Math.abs(row.splitter - splitter) < 0.001)
    .sort((a, b) => a.length - b.length);
  const [shortest] = alike;
  const longest = alike[alike.length - 1];
  if (!shortest || !longest) {
    const known = rows.map((row) => `${1000 * row.airway} and ${1000 * row.splitter} mm`).join(', ');
    throw new ArgumentError('airway and splitter of the silencer', `${1000 * airway} and ${1000 * splitter} mm`, known);
  }
  requireNumber('length of the silencer', length, { atLeast: shortest.length, atMost: longest.length, unit: 'metres' });
  const upper = alike.find((row) => row.length >= length)!;
  const lower = alike.findLast((row) => row.length <= length)!;
  const share = upper.length === lower.length ? 0 : (length - lower.length) / (upper.length - lower.length);
  if (lower.insertionLoss.length !== upper.insertionLoss.length) {
    throw new ArgumentError('number of bands of the silencer rows', upper.insertionLoss.length, 'the same in each row');
  }
  return asInsertionLoss(lower.insertionLoss.map((loss, band) => loss + share * (upper.insertionLoss[band]! - loss)));
}
