import { ArgumentError } from '../errors/argument-error.js';
import { bendingStiffness } from './bending-stiffness.js';
import { checkPlate, type Plate } from './plate.js';
import type { SinglePanel } from './single-panel.js';

/** Sheets that slide on each other freely, or that are glued so that they bend as one section. */
export type SheetBond = 'sliding' | 'glued';

/**
 * Several sheets on top of each other as one panel; the two bonds are the lower and the upper limit of its stiffness.
 *
 * Equation, E' = E/(1 - nu^2): sliding B = sum(E' h^3/12); glued B = sum(E' (h^3/12 + h (z - z0)^2)), z the middle of a
 * sheet and z0 = sum(E' h z)/sum(E' h) the neutral plane. Mass is the sum; the loss factor is the mean weighted with what
 * each sheet adds to the stiffness.
 * Units: m, kg/m3, Pa; results as in `SinglePanel`.
 * Source: thin-plate theory (derived). Two like sheets, glued, are four times as stiff as two that slide.
 * Valid for glue that is stiff in shear; a soft layer between is `constrainedLayerStiffness`. Screwed sheets lie close to
 * sliding.
 * Errors: ArgumentError without sheets or for a sheet that cannot be.
 */
export function laminatedPanel(sheets: readonly Plate[], bond: SheetBond): SinglePanel {
  if (sheets.length === 0) throw new ArgumentError('number of sheets', 0, 'at least one');
  sheets.forEach(checkPlate);
  let mass = 0;
  let extension = 0;
  let moment = 0;
  let place = 0;
  for (const sheet of sheets) {
    const stretch = stretchStiffness(sheet);
    mass += sheet.density * sheet.thickness;
    extension += stretch;
    moment += stretch * (place + sheet.thickness / 2);
    place += sheet.thickness;
  }
  const neutral = extension > 0 ? moment / extension : 0;
  let stiffness = 0;
  let loss = 0;
  place = 0;
  for (const sheet of sheets) {
    const arm = bond === 'glued' ? place + sheet.thickness / 2 - neutral : 0;
    const own = bendingStiffness(sheet) + stretchStiffness(sheet) * arm ** 2;
    stiffness += own;
    loss += own * sheet.lossFactor;
    place += sheet.thickness;
  }
  return { surfaceMass: mass, stiffness, lossFactor: stiffness > 0 ? loss / stiffness : 0 };
}

/** Stiffness of a plate against stretching in its plane, per unit width, N/m: E h/(1 - nu^2). */
export function stretchStiffness(plate: Plate): number {
  return (plate.youngsModulus * plate.thickness) / (1 - plate.poissonRatio ** 2);
}
