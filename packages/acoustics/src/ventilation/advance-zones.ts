import { requireNumber } from '../errors/require-number.js';
import type { ZoneRates } from './zone-rates.js';

/**
 * State of a linear balance of zones after a time.
 *
 * Equation: x(t) = exp(A t) x(0) with the source carried along by a constant 1; the exponential is exact, summed over
 * positive terms alone and squared up. Units: those of the state; s.
 * Source: uniformisation of the exponential (common practice).
 * Errors: ArgumentError when the air is exchanged so often in the time that it can't be counted; callers check the rest.
 */
export function advanceZones(rates: ZoneRates, start: readonly number[], seconds: number): number[] {
  const count = start.length;
  // Coordinates: the zones, then a constant 1 that carries the sources.
  const size = count + 1;
  const leaving = rates.inflow.map((row, zone) =>
    row.reduce((sum, rate, from) => (from === zone ? sum : sum + rate), rates.outside[zone]!),
  );
  const fastest = Math.max(...leaving);
  requireNumber('times that the air is exchanged', fastest * seconds);
  const squarings = Math.max(0, Math.ceil(Math.log2(Math.max(1, fastest * seconds))));
  const step = seconds / 2 ** squarings;
  // exp(A step) = e^-x exp((A + fastest) step), whose terms hold no difference of large numbers. The constant row is zero
  // in A, so it keeps the value 1 whatever is added to it.
  const shifted = rates.inflow.map((row, zone) => [
    ...row.map((rate, from) => step * (from === zone ? fastest - leaving[zone]! : rate)),
    step * rates.source[zone]!,
  ]);
  shifted.push(Array.from({ length: size }, (_, column) => (column === count ? fastest * step : 0)));
  const identity: number[][] = shifted.map((row, i) => row.map((_, j) => (i === j ? 1 : 0)));
  let term = identity;
  let sum = identity;
  for (let order = 1; order <= 30; order++) {
    term = multiply(term, shifted).map((row) => row.map((value) => value / order));
    sum = sum.map((row, i) => row.map((value, j) => value + term[i]![j]!));
  }
  const decay = Math.exp(-fastest * step);
  let result = sum.map((row) => row.map((value) => value * decay));
  for (let squaring = 0; squaring < squarings; squaring++) result = multiply(result, result);
  const state = [...start, 1];
  return result.slice(0, count).map((row) => row.reduce((total, value, column) => total + value * state[column]!, 0));
}

function multiply(a: readonly (readonly number[])[], b: readonly (readonly number[])[]): number[][] {
  return a.map((row) => b[0]!.map((_, j) => row.reduce((sum, value, k) => sum + value * b[k]![j]!, 0)));
}
