import { requireNumber } from '../errors/require-number.js';

/** A step of a linear balance: the state a fixed time later. */
export type LinearStep = {
  /** `matrix[i][j]`: what zone j adds to zone i a step later. */
  readonly matrix: readonly (readonly number[])[];
  readonly constant: readonly number[];
};

/**
 * The step of a linear balance with constant flows and loads, so that many equal steps cost one advance each no more.
 *
 * Equation: x(t + h) = M x(t) + c; the columns of M and c are read off `advance` from zero and from one unit in each zone,
 * which is exact because the balance is linear. Units: those of the state; `unit` a state that `advance` accepts, as 1000.
 * Source: our own. Valid: `advance` linear in its state, as `zoneConcentrations`, `zoneTemperatures` and `zoneVapour` are.
 * Errors: ArgumentError for a count or unit that can't be.
 *
 * @example
 * ```ts
 * import { linearStep, takeStep, zoneConcentrations } from '@boothwright/acoustics/ventilation';
 *
 * const zones = { volumes: [4], between: [[0]], fromOutside: [0.005] };
 * const load = { outside: 450, generation: [5e-6] };
 * const step = linearStep(1, 1000, (state) => zoneConcentrations(zones, load, state, 60));
 * takeStep(step, [450])[0]; // 522
 * ```
 */
export function linearStep(
  zones: number,
  unit: number,
  advance: (state: readonly number[]) => readonly number[],
): LinearStep {
  requireNumber('number of zones', zones, { atLeast: 1 });
  requireNumber('unit of the state', unit, { above: 0 });
  const none = Array.from({ length: zones }, () => 0);
  const constant = advance(none);
  const columns = none.map((_, zone) => advance(none.map((_, other) => (other === zone ? unit : 0))));
  return {
    constant,
    matrix: none.map((_, row) => columns.map((column) => (column[row]! - constant[row]!) / unit)),
  };
}

/** The state a step after `state`. Units and source: as of `linearStep`. */
export function takeStep({ matrix, constant }: LinearStep, state: readonly number[]): number[] {
  return matrix.map((row, zone) => row.reduce((sum, share, from) => sum + share * state[from]!, constant[zone]!));
}

/** Steps one after the other as one step. Units and source: as of `linearStep`. Errors: none; at least one step is expected. */
export function joinedSteps(steps: readonly LinearStep[]): LinearStep {
  return steps.reduce((first, second) => ({
    constant: takeStep(second, first.constant),
    matrix: second.matrix.map((row) =>
      first.matrix[0]!.map((_, column) =>
        row.reduce((sum, share, via) => sum + share * first.matrix[via]![column]!, 0),
      ),
    ),
  }));
}
