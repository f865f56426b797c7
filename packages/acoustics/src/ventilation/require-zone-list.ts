import { ArgumentError } from '../errors/argument-error.js';
import { type NumberRange, requireNumber } from '../errors/require-number.js';

/** Rejects a list that isn't one number inside a range for each zone; `what` stands before "zone 1 of 2". */
export function requireZoneList(
  name: string,
  what: string,
  list: readonly number[],
  count: number,
  range: NumberRange,
): void {
  if (list.length !== count) throw new ArgumentError(`number of zones in ${name}`, list.length, `${count}`);
  list.forEach((value, zone) => {
    requireNumber(`${what} zone ${zone + 1} of ${count}`, value, range);
  });
}
