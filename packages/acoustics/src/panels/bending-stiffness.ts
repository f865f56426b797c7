import { checkPlate, type Plate } from './plate.js';
import { stiffnessOfPlate } from './stiffness-of-plate.js';

/**
 * Bending stiffness of a plate per unit width, N m.
 *
 * Equation: B = E h^3 / (12 (1 - nu^2)), E in Pa, h in m.
 * Source: common practice, thin-plate theory. Valid while the bending wave is longer than about six thicknesses.
 * Errors: ArgumentError for a plate that cannot exist.
 * See also: `criticalFrequency`.
 *
 * @example
 * ```ts
 * import { bendingStiffness } from '@boothwright/acoustics/panels';
 *
 * // Invented figures of a board.
 * const board = { thickness: 0.0125, density: 700, youngsModulus: 2.5e9, poissonRatio: 0.2, lossFactor: 0.02 };
 * bendingStiffness(board); // 424
 * ```
 */
export function bendingStiffness(plate: Plate): number {
  checkPlate(plate);
  return stiffnessOfPlate(plate);
}
