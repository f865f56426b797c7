import { requireNumber } from '../errors/require-number.js';

/** A flat, homogeneous plate; isotropic unless it states a modulus across. */
export type Plate = {
  /** m */
  readonly thickness: number;
  /** kg/m3 */
  readonly density: number;
  /** Pa */
  readonly youngsModulus: number;
  readonly poissonRatio: number;
  /** Ratio of the imaginary to the real part of the bending stiffness. */
  readonly lossFactor: number;
  /** Pa; of an isotropic material, E/(2 (1 + nu)), when absent. */
  readonly shearModulus?: number;
  /** Pa; modulus across the grain of wood, `youngsModulus` being that along it. As stiff in every direction when absent. */
  readonly crossModulus?: number;
};

/** m; heavier than 10 t/m2 in concrete, and less than most boards are in millimetres. */
const thickest = 10;

/**
 * Rejects a plate that cannot exist.
 *
 * Poisson's ratio is that of an isotropic solid, above -1 and up to 0.5; the loss factor is at most 1. A thickness above
 * 10 m is refused: 12.5 in metres was meant in millimetres. A modulus has no lower limit, since a film or a cloth is a plate
 * whose stiffness tends to 0: a figure in GPa given as Pa is taken as that of a limp sheet.
 * Errors: ArgumentError that names the property, what was found and what was expected.
 */
export function checkPlate(plate: Plate): void {
  requireNumber('plate thickness', plate.thickness, { atLeast: 0, atMost: thickest, unit: 'metres' });
  requireNumber('plate density', plate.density, { above: 0, unit: 'kg/m3' });
  requireNumber('plate modulus', plate.youngsModulus, { atLeast: 0, unit: 'Pa' });
  requireNumber("Poisson's ratio", plate.poissonRatio, { above: -1, atMost: 0.5 });
  if (plate.shearModulus !== undefined) requireNumber('shear modulus', plate.shearModulus, { above: 0, unit: 'Pa' });
  if (plate.crossModulus !== undefined) {
    requireNumber('modulus across the grain', plate.crossModulus, { atLeast: 0, unit: 'Pa' });
  }
  requireNumber('loss factor', plate.lossFactor, { atLeast: 0, atMost: 1 });
}
