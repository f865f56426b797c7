import { ArgumentError } from '../errors/argument-error.js';
import { requireZoneList } from './require-zone-list.js';

/** Rejects a table that isn't one row for each zone with one number of 0 or more for each zone. */
export function requireZoneRows(name: string, what: string, rows: readonly (readonly number[])[], count: number): void {
  if (rows.length !== count) throw new ArgumentError(`number of zones in ${name}`, rows.length, `${count}`);
  rows.forEach((row, zone) => {
    const words = `zone ${zone + 1} of ${count}`;
    requireZoneList(`${what} out of ${words}`, `${what} out of ${words} into`, row, count, { atLeast: 0 });
  });
}
