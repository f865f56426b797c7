import { requireNumber } from '../errors/require-number.js';
import { levelOf } from '../levels/level-of.js';

/** A lined chamber between two ducts. */
export type Plenum = {
  /** Area of the outlet, m2. */
  readonly outletArea: number;
  /** From the centre of the inlet to that of the outlet, m. */
  readonly distance: number;
  /** Between the axis of the inlet and the line from inlet to outlet, degrees, 0 to 90. */
  readonly angleDeg: number;
  /** Area of the walls inside, m2. */
  readonly wallArea: number;
  /** Mean absorption of the walls in the band, above 0 and up to 1. */
  readonly absorption: number;
};

/**
 * Loss of a lined plenum chamber in one band, dB.
 *
 * Equation: -10 lg{S_out [cos(theta)/(pi r^2) + (1 - a)/(S_w a)]}. Some handbooks print 2 pi r^2 and leave (1 - a) out.
 * Units: areas m2, distance m, angle degrees; result dB.
 * Source: R. J. Wells, Noise Control 4, 1958, as D. A. Bies, C. H. Hansen and C. Q. Howard, Engineering Noise Control,
 * 5th ed., 2017, equation 8.275 (as transcribed).
 * Valid: within 3 dB where the wavelength is smaller than the plenum; 5 to 10 dB too low below it (G. Ballou, ed., Handbook
 * for Sound Engineers, equations 4-5 and 4-6, as transcribed). Negative results mean that the geometry is outside it.
 * Errors: ArgumentError for a quantity that can't be.
 */
export function plenumLoss({ outletArea, distance, angleDeg, wallArea, absorption }: Plenum): number {
  requireNumber('outlet area', outletArea, { above: 0, unit: 'square metres' });
  requireNumber('distance in the plenum', distance, { above: 0, unit: 'metres' });
  requireNumber('angle in the plenum', angleDeg, { atLeast: 0, atMost: 90, unit: 'degrees' });
  requireNumber('wall area of the plenum', wallArea, { above: 0, unit: 'square metres' });
  requireNumber('absorption of the plenum', absorption, { above: 0, atMost: 1 });
  const direct = Math.cos((angleDeg * Math.PI) / 180) / (Math.PI * distance ** 2);
  return -levelOf(outletArea * (direct + (1 - absorption) / (wallArea * absorption)));
}
