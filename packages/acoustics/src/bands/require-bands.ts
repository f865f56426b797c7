/**
 * Rejects a list of band values that cannot be meant: a wrong number of bands, or a value that is not a finite number.
 * `lengths` holds the band counts that are understood. Silence, minus infinity dB, passes when `silence` is allowed.
 */
export function requireBands(
  what: string,
  values: readonly (number | null)[],
  lengths: readonly number[],
  allow: { readonly unknown?: boolean; readonly silence?: boolean },
): void {
  if (!lengths.includes(values.length)) {
    throw new RangeError(`${what} has ${values.length} bands, expected ${lengths.join(' or ')}`);
  }
  values.forEach((value, index) => {
    if (value === null && allow.unknown) return;
    if (value === Number.NEGATIVE_INFINITY && allow.silence) return;
    if (!Number.isFinite(value)) {
      throw new RangeError(`${what} is ${value} in band ${index + 1} of ${values.length}, expected a number`);
    }
  });
}
