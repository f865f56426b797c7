import type { Air } from '../air/air-properties.js';
import { requireNumber } from '../errors/require-number.js';
import { requireOneOf } from '../errors/require-one-of.js';
import { besselJ1 } from '../math/bessel.js';
import { type Complex, complex } from '../math/complex.js';
import { struveH1 } from '../math/struve.js';

/** A round hole through a wall. */
export type Aperture = {
  /** m */
  readonly radius: number;
  /** m, through the wall */
  readonly depth: number;
  /** `defaultIncidence` when absent. */
  readonly incidence?: 'normal' | 'diffuse';
};

/** Rooms have diffuse fields; the published formula is for normal incidence. */
export const defaultIncidence = 'diffuse';

/**
 * Transmission loss of a round hole, dB, referred to its own area; it can be negative.
 *
 * Equation: tau = 4 R/{4 R^2 (cos kd - X sin kd)^2 + [(R^2 - X^2 + 1) sin kd + 2 X cos kd]^2} with R and X of
 * `pistonImpedance`, for normal incidence. In a diffuse field the mean-square pressure on a small closed mouth is twice as
 * large for the same incident intensity; for larger mouths it falls with 4 R/(k a)^2 (reciprocity of a piston with the
 * field), and tau is multiplied by that factor, but never by less than 1.
 * Units: radius and depth in m, hz in Hz.
 * Source: derived: pressure 2 p on the closed mouth, two-port of the air in the hole between two pistons, power R v^2 out
 * of the far one; the denominator is that of G.P. Wilson, W.W. Soroka, J. Acoust. Soc. Am. 37 (1965) 286 (from memory).
 * With 4 R^2 above, as the formula is often handed on, a small hole in a thin wall would pass nothing; Rayleigh's exact
 * limit for it is tau = 8/pi^2, here 0.69 because the end correction is that of a piston. Diffuse factor derived here.
 * Valid for holes whose air moves as a plug; friction is left out, so holes below about 1 mm are overestimated.
 * Errors: ArgumentError for a radius or depth below 0, or an incidence that is not known.
 *
 * @example
 * ```ts
 * import { airProperties } from '@boothwright/acoustics/air';
 * import { apertureTransmissionLoss } from '@boothwright/acoustics/openings';
 *
 * const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
 * // A hole of 20 mm through 50 mm, at 500 Hz.
 * apertureTransmissionLoss({ radius: 0.01, depth: 0.05 }, 500, air); // 10
 * ```
 */
export function apertureTransmissionLoss(
  { radius, depth, incidence = defaultIncidence }: Aperture,
  hz: number,
  air: Air,
): number {
  requireOneOf('incidence', incidence, ['normal', 'diffuse']);
  requireNumber('radius of the hole', radius, { atLeast: 0, unit: 'metres' });
  requireNumber('frequency', hz, { above: 0, unit: 'Hz' });
  requireNumber('depth of the hole', depth, { atLeast: 0, unit: 'metres' });
  if (radius === 0) return Number.POSITIVE_INFINITY;
  const k = (2 * Math.PI * hz) / air.soundSpeed;
  const { re, im } = pistonImpedance(k * radius);
  const cos = Math.cos(k * depth);
  const sin = Math.sin(k * depth);
  const inPhase = 2 * re * (cos - im * sin);
  const outOfPhase = (re * re - im * im + 1) * sin + 2 * im * cos;
  const normal = (4 * re) / (inPhase ** 2 + outOfPhase ** 2);
  const factor = incidence === 'diffuse' ? Math.max(1, (4 * re) / (k * radius) ** 2) : 1;
  return -10 * Math.log10(normal * factor);
}

/**
 * Radiation impedance of a round piston in a wall over rho c, for k times its radius.
 *
 * Equation: R = 1 - J1(2 ka)/(ka), X = H1(2 ka)/(ka), with the Struve function H1.
 * Source: Rayleigh, in every textbook of acoustics (common practice). For small ka: (ka)^2/2 + j 8 ka/(3 pi).
 */
export function pistonImpedance(ka: number): Complex {
  // The difference of nearly equal numbers is replaced by its series where it would lose digits.
  if (ka < 1e-2) return complex((ka * ka) / 2 - ka ** 4 / 12, struveH1(2 * ka) / ka);
  return complex(1 - besselJ1(2 * ka) / ka, struveH1(2 * ka) / ka);
}
