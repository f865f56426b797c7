import { requireNumber } from '../errors/require-number.js';
import { requireOneOf } from '../errors/require-one-of.js';

/** Which way heat goes through a layer that lies or stands: up through a roof, across a wall, down through a floor. */
export type HeatFlow = 'up' | 'across' | 'down';

/** m; m2 K/W. Source: as in `airLayerResistance`. */
const rows: readonly (readonly [thickness: number, up: number, across: number, down: number])[] = [
  [0, 0, 0, 0],
  [0.005, 0.11, 0.11, 0.11],
  [0.007, 0.13, 0.13, 0.13],
  [0.01, 0.15, 0.15, 0.15],
  [0.015, 0.16, 0.17, 0.17],
  [0.025, 0.16, 0.18, 0.19],
  [0.05, 0.16, 0.18, 0.21],
  [0.1, 0.16, 0.18, 0.22],
  [0.3, 0.16, 0.18, 0.23],
];

/**
 * Thermal resistance of a closed layer of air between two boards, m2 K/W.
 *
 * Rule: linear between the rows of the table, held beyond 300 mm. Units: thickness m.
 * Source: ISO 6946:2007, Table 2 (as transcribed). Valid: closed air between surfaces that radiate as most building
 * materials do; a metal foil doubles it.
 * Errors: ArgumentError for a thickness that can't be or a way of the heat that is not known.
 *
 * @example
 * ```ts
 * import { airLayerResistance } from '@boothwright/acoustics/air';
 *
 * airLayerResistance(0.05, 'across'); // 0.18
 * ```
 */
export function airLayerResistance(thickness: number, heatFlow: HeatFlow): number {
  requireNumber('thickness of the air layer', thickness, { atLeast: 0, unit: 'metres' });
  requireOneOf('way of the heat', heatFlow, ['up', 'across', 'down']);
  const column = { up: 1, across: 2, down: 3 }[heatFlow] as 1 | 2 | 3;
  const above = rows.findIndex(([limit]) => limit >= thickness);
  if (above < 0) return rows[rows.length - 1]![column];
  if (above === 0) return rows[0]![column];
  const [from, to] = [rows[above - 1]!, rows[above]!];
  return from[column] + ((thickness - from[0]) / (to[0] - from[0])) * (to[column] - from[column]);
}
