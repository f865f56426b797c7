import { ArgumentError } from '../errors/argument-error.js';

/**
 * Rejects a list of band values that cannot be meant: a wrong number of bands, or a value that is not a finite number.
 * `lengths` holds the band counts that are understood. Silence, minus infinity dB, passes when `silence` is allowed.
 * Errors: ArgumentError.
 */
export function requireBands(
  what: string,
  values: readonly (number | null)[],
  lengths: readonly number[],
  allow: { readonly unknown?: boolean; readonly silence?: boolean },
): void {
  const count = values.length;
  if (!lengths.includes(count)) {
    throw new ArgumentError(`number of bands of the ${what}`, count, lengths.join(' or '));
  }
  values.forEach((value, index) => {
    if (value === null && allow.unknown) return;
    if (value === Number.NEGATIVE_INFINITY && allow.silence) return;
    if (!Number.isFinite(value)) {
      throw new ArgumentError(`${what} in band ${index + 1} of ${count}`, value, 'a number');
    }
  });
}
