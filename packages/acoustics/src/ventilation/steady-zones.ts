import type { ZoneRates } from './zone-rates.js';

/**
 * State that a linear balance of zones reaches in the long run; null when some zones are cut off from outside, where
 * there is none.
 *
 * Equation: (outside_j + sum_i inflow_ji) x_j = sum_i inflow_ji x_i + source_j, solved by elimination of one zone after
 * the other. What leaves a zone is summed anew each time, so that no difference of large numbers is left.
 * Units: those of the state. Source: elimination after Grassmann, Taksar and Heyman (from memory).
 * Errors: none; callers check what they pass.
 */
export function steadyZones(rates: ZoneRates): number[] | null {
  const inflow = rates.inflow.map((row) => [...row]);
  const outside = [...rates.outside];
  const source = [...rates.source];
  const leaving: number[] = [];
  const last = inflow.length - 1;
  for (let zone = last; zone >= 0; zone--) {
    const row = inflow[zone]!;
    leaving[zone] = row.slice(0, zone).reduce((sum, rate) => sum + rate, outside[zone]!);
    if (leaving[zone] === 0) return null;
    for (let other = 0; other < zone; other++) {
      const share = inflow[other]![zone]! / leaving[zone]!;
      for (let from = 0; from < zone; from++) inflow[other]![from]! += share * row[from]!;
      outside[other]! += share * outside[zone]!;
      source[other]! += share * source[zone]!;
    }
  }
  const state: number[] = [];
  for (let zone = 0; zone <= last; zone++) {
    const row = inflow[zone]!;
    const taken = state.reduce((sum, value, from) => sum + row[from]! * value, source[zone]!);
    state.push(taken / leaving[zone]!);
  }
  return state;
}
