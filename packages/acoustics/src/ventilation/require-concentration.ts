import { requireNumber } from '../errors/require-number.js';

/** Parts per million of a gas that is nothing else. */
const pureGas = 1e6;

/** Rejects a concentration in ppm, given or found, below none or above all of the air. */
export function requireConcentration(argument: string, value: number): void {
  // The last digits of a sum may pass the limit.
  if (value > pureGas && value <= pureGas * (1 + 1e-12)) return;
  requireNumber(argument, value, { atLeast: 0, atMost: pureGas, unit: 'ppm' });
}
