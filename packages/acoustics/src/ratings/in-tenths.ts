/** A value in whole tenths, the half rounded up; the small part makes up for decimal figures held in binary. */
export function inTenths(value: number): number {
  return Math.floor(10 * value + 0.5 + 1e-7);
}
