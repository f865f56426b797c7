import { requireNumber } from '../errors/require-number.js';

/** Rejects a quantity that can't be zero, negative or missing. */
export function requirePositive(what: string, value: number, unit?: string): void {
  requireNumber(what, value, { above: 0, ...(unit === undefined ? {} : { unit }) });
}

/** Rejects a quantity that can't be negative or missing. */
export function requireNotNegative(what: string, value: number, unit?: string): void {
  requireNumber(what, value, { atLeast: 0, ...(unit === undefined ? {} : { unit }) });
}
