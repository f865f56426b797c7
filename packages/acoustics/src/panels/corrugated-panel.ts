import { ArgumentError } from '../errors/argument-error.js';
import { requireNumber } from '../errors/require-number.js';
import { bendingStiffness } from './bending-stiffness.js';
import type { OrthotropicPanel } from './orthotropic-panel.js';
import { checkPlate, type Plate } from './plate.js';

/** A point of the middle line of a profiled sheet over one period, m: place across and height. */
export type ProfilePoint = { readonly across: number; readonly height: number };

/**
 * A sheet folded or corrugated to a profile, as a uniform orthotropic panel.
 *
 * Equation, s the length of the middle line over one period p: along the folds B = E I/p with the second moment
 * I = sum over the flats of h L (z1^2 + z1 z2 + z2^2)/3 + L h^3 (dy/L)^2/12 about the centroid; across them
 * B = (p/s) E h^3/(12 (1 - nu^2)); mass rho h s/p.
 * Units: m, Pa; results N m and kg/m2.
 * Source: S. Timoshenko, S. Woinowsky-Krieger: Theory of Plates and Shells (1959), corrugated sheet (from memory); the
 * second moment is exact for straight flats.
 * Valid for a thin sheet in a profile whose period is far below the bending wavelength; local resonances of the flats,
 * which cost real roofs several dB, are left out.
 * Errors: ArgumentError for less than two points, a place that does not increase, or a plate that cannot be.
 */
export function corrugatedPanel(plate: Plate, profile: readonly ProfilePoint[]): OrthotropicPanel {
  checkPlate(plate);
  if (profile.length < 2) throw new ArgumentError('number of points of the profile', profile.length, '2 or more');
  let length = 0;
  let moment = 0;
  const flats = profile.slice(1).map((to, index) => {
    const from = profile[index]!;
    requireNumber('step across of the profile', to.across - from.across, { atLeast: 0, unit: 'metres' });
    const flat = Math.hypot(to.across - from.across, to.height - from.height);
    length += flat;
    moment += (flat * (from.height + to.height)) / 2;
    return { from, to, flat };
  });
  const period = profile[profile.length - 1]!.across - profile[0]!.across;
  requireNumber('period of the profile', period, { above: 0, unit: 'metres' });
  const centre = moment / length;
  const h = plate.thickness;
  let second = 0;
  for (const { from, to, flat } of flats) {
    if (flat === 0) continue;
    const [low, high] = [from.height - centre, to.height - centre];
    second += (h * flat * (low * low + low * high + high * high)) / 3;
    second += (flat * h ** 3 * ((to.across - from.across) / flat) ** 2) / 12;
  }
  return {
    surfaceMass: (plate.density * h * length) / period,
    stiffnessAlong: (plate.youngsModulus * second) / period,
    stiffnessAcross: (period / length) * bendingStiffness(plate),
    lossFactor: plate.lossFactor,
  };
}
