import { requireNumber } from '../errors/require-number.js';

/** Density kg/m3 and conductivity W/(m K) of plywood, and of soda-lime glass. Source: as in `boardConductivity`. */
const rows: readonly (readonly [density: number, conductivity: number])[] = [
  [300, 0.09],
  [500, 0.13],
  [700, 0.17],
  [1000, 0.24],
  [2500, 1],
];

/**
 * Thermal conductivity of a board by its density, W/(m K).
 *
 * Rule: linear between the rows of plywood, from its heaviest on to that of glass, held at both ends. Units: kg/m3.
 * Source: EN 12524:2000, Table 1: plywood 300, 500, 700 and 1000 kg/m3, soda-lime glass 2500 kg/m3 (as transcribed); the
 * rule between them is our own. Gypsum plasterboard of 900 kg/m3 is printed with 0.25, softwood of 500 with 0.13.
 * Valid: boards of wood, gypsum, mineral and glass within about a fifth; not metal or foam.
 * Errors: ArgumentError for a density that can't be.
 *
 * @example
 * ```ts
 * import { boardConductivity } from '@boothwright/acoustics/air';
 *
 * boardConductivity(600); // 0.15
 * ```
 */
export function boardConductivity(density: number): number {
  requireNumber('density', density, { above: 0, unit: 'kilograms per cubic metre' });
  const above = rows.findIndex(([limit]) => limit >= density);
  if (above < 0) return rows[rows.length - 1]![1];
  if (above === 0) return rows[0]![1];
  const [from, to] = [rows[above - 1]!, rows[above]!];
  return from[1] + ((density - from[0]) / (to[0] - from[0])) * (to[1] - from[1]);
}
