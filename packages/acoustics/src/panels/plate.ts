/** A thin, flat, homogeneous, isotropic plate. */
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
};

/**
 * Rejects a plate that cannot exist.
 * Errors: RangeError that names the property, what was found and what was expected.
 */
export function checkPlate(plate: Plate): void {
  const { thickness, density, youngsModulus, poissonRatio, lossFactor } = plate;
  if (!(thickness >= 0 && Number.isFinite(thickness))) {
    throw new RangeError(`plate thickness is ${thickness}, expected a number of metres of 0 or more`);
  }
  if (!(density > 0 && Number.isFinite(density))) {
    throw new RangeError(`plate density is ${density}, expected a number of kg/m3 above 0`);
  }
  if (!(youngsModulus >= 0 && Number.isFinite(youngsModulus))) {
    throw new RangeError(`plate modulus is ${youngsModulus}, expected a number of Pa of 0 or more`);
  }
  if (!(poissonRatio > -1 && poissonRatio < 1)) {
    throw new RangeError(`Poisson's ratio is ${poissonRatio}, expected a number between -1 and 1`);
  }
  if (!(lossFactor >= 0 && Number.isFinite(lossFactor))) {
    throw new RangeError(`loss factor is ${lossFactor}, expected a number of 0 or more`);
  }
}
