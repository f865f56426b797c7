import type { Air } from '../air/air-properties.js';
import { bendingStiffness } from './bending-stiffness.js';
import { checkPlate, type Plate } from './plate.js';

/**
 * Frequency at which the free bending wave of a plate is as fast as sound in air, Hz; infinite without stiffness.
 *
 * Equation: fc = c^2/(2 pi) sqrt(m/B), m in kg/m2, B in N m, c in m/s.
 * Source: L. Cremer (1942), in every textbook of building acoustics; C. Hopkins: Sound Insulation (2007), Table A2 gives
 * h fc of materials. Valid for thin plates, see `bendingStiffness`.
 * Errors: ArgumentError for a plate that cannot exist.
 *
 * @example
 * ```ts
 * import { airProperties } from '@boothwright/acoustics/air';
 * import { criticalFrequency } from '@boothwright/acoustics/panels';
 *
 * const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
 * // Invented figures of a board.
 * const board = { thickness: 0.0125, density: 700, youngsModulus: 2.5e9, poissonRatio: 0.2, lossFactor: 0.02 };
 * criticalFrequency(board, air); // 2704
 * ```
 */
export function criticalFrequency(plate: Plate, air: Air): number {
  checkPlate(plate);
  return criticalFrequencyOf(plate.density * plate.thickness, bendingStiffness(plate), air);
}

/** The same from a mass per area in kg/m2 and a bending stiffness in N m, for leaves of several sheets. */
export function criticalFrequencyOf(surfaceMass: number, stiffness: number, air: Air): number {
  return (air.soundSpeed ** 2 / (2 * Math.PI)) * Math.sqrt(surfaceMass / stiffness);
}
