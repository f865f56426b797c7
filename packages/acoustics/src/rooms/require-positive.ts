/** Rejects a quantity that can't be zero, negative or missing. */
export function requirePositive(what: string, value: number): void {
  if (!(value > 0 && value < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`${what} is ${value}, expected a number above 0`);
  }
}

/** Rejects a quantity that can't be negative or missing. */
export function requireNotNegative(what: string, value: number): void {
  if (!(value >= 0 && value < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`${what} is ${value}, expected a number of 0 or more`);
  }
}
