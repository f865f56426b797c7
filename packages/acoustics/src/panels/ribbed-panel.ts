import { requireNumber } from '../errors/require-number.js';
import { bendingStiffness } from './bending-stiffness.js';
import type { OrthotropicPanel } from './orthotropic-panel.js';
import { checkPlate, type Plate } from './plate.js';

/** Ribs of rectangular section on one side of a plate, m, kg/m3 and Pa. */
export type Ribs = {
  readonly spacing: number;
  readonly width: number;
  readonly height: number;
  readonly density: number;
  readonly youngsModulus: number;
};

/**
 * A plate with ribs glued or welded to one side, as a uniform orthotropic panel.
 *
 * Equation: along the ribs the section of plate and rib about its common neutral plane over the spacing,
 * B = sum(E' (I + A (z - z0)^2))/spacing, E' = E/(1 - nu^2) in the plate and E in the rib; across them the plate alone.
 * Units: m, Pa, kg/m3.
 * Source: theory of bending (derived). The plate alone across the ribs is a lower bound: the strip over a rib is stiffer.
 * Valid while the bending wavelength is far above the spacing.
 * Errors: ArgumentError for parts that cannot be, or ribs wider than their spacing.
 */
export function ribbedPanel(plate: Plate, ribs: Ribs): OrthotropicPanel {
  checkPlate(plate);
  requireNumber('spacing of the ribs', ribs.spacing, { above: 0, unit: 'metres' });
  requireNumber('width of a rib', ribs.width, { atLeast: 0, atMost: ribs.spacing, unit: 'metres' });
  requireNumber('height of a rib', ribs.height, { atLeast: 0, unit: 'metres' });
  requireNumber('density of the ribs', ribs.density, { atLeast: 0, unit: 'kg/m3' });
  requireNumber('modulus of the ribs', ribs.youngsModulus, { atLeast: 0, unit: 'Pa' });
  const h = plate.thickness;
  const share = ribs.width / ribs.spacing;
  const own = bendingStiffness(plate);
  const stretch = (plate.youngsModulus * h) / (1 - plate.poissonRatio ** 2);
  const ribStretch = ribs.youngsModulus * ribs.height * share;
  // Two layers whose middles are this far apart bend about a plane between them.
  const arm = (h + ribs.height) / 2;
  const joint = stretch + ribStretch === 0 ? 0 : ((stretch * ribStretch) / (stretch + ribStretch)) * arm ** 2;
  return {
    surfaceMass: plate.density * h + ribs.density * ribs.height * share,
    stiffnessAlong: own + (ribs.youngsModulus * ribs.height ** 3 * share) / 12 + joint,
    stiffnessAcross: own,
    lossFactor: plate.lossFactor,
  };
}
