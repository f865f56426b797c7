import { requireNumber } from '../errors/require-number.js';

/**
 * Compliance of connections one behind the other, as a stud and a resilient channel on it; same unit as the parts.
 *
 * Equation: C = C1 + C2 + ... Source: springs in series (mechanics).
 * Errors: ArgumentError for a compliance below 0.
 */
export function complianceInSeries(...parts: readonly number[]): number {
  parts.forEach((part, index) => {
    requireNumber(`compliance ${index + 1} of ${parts.length}`, part, { atLeast: 0 });
  });
  return parts.reduce((sum, part) => sum + part, 0);
}

/**
 * Compliance per length of the flange of a thin folded section, m2/N, screwed at a distance from its web.
 *
 * Equation: C = L^3/(3 D), D = E t^3/(12 (1 - nu^2)): a strip held at the web and free to turn at the screw.
 * Units: L, t in m, E in Pa. Source: beam theory (derived). 20 mm of 0.5 mm steel give about 1.1e-6 m2/N. Real webs give
 * as well, and the board holds the flange against turning, which stiffens it up to four times.
 * Errors: ArgumentError for a length, thickness, modulus or Poisson's ratio that cannot be.
 */
export function flangeCompliance(arm: number, thickness: number, youngsModulus: number, poissonRatio: number): number {
  return arm ** 3 / (3 * flangeStiffness(arm, thickness, youngsModulus, poissonRatio));
}

/**
 * Compliance per length of the flange of a thin folded section whose free end is kept from turning, m2/N.
 *
 * Equation: C = L^3/(12 D), D = E t^3/(12 (1 - nu^2)): a strip held at the web and guided at the screw, because the board
 * that is screwed flat onto it does not let it turn. A quarter of `flangeCompliance`.
 * Units: L, t in m, E in Pa. Source: beam theory (derived). A stud has two flanges, one at each board: their compliances
 * add up (`complianceInSeries`). Two of 17.5 mm, half of a usual 35 mm flange, of 0.5 mm steel give 3.8e-7 m2/N.
 * Valid below the resonances of the flange itself; the web counts as rigid.
 * Errors: ArgumentError for a length, thickness, modulus or Poisson's ratio that cannot be.
 */
export function guidedFlangeCompliance(
  arm: number,
  thickness: number,
  youngsModulus: number,
  poissonRatio: number,
): number {
  return arm ** 3 / (12 * flangeStiffness(arm, thickness, youngsModulus, poissonRatio));
}

/** Bending stiffness of the sheet of a flange per width, N m. Errors: ArgumentError as of the functions above. */
function flangeStiffness(arm: number, thickness: number, youngsModulus: number, poissonRatio: number): number {
  requireNumber('arm of the flange', arm, { atLeast: 0, unit: 'metres' });
  requireNumber('thickness of the sheet', thickness, { above: 0, unit: 'metres' });
  requireNumber("Young's modulus", youngsModulus, { above: 0, unit: 'Pa' });
  requireNumber("Poisson's ratio", poissonRatio, { above: -1, below: 0.5 + 1e-12 });
  return (youngsModulus * thickness ** 3) / (12 * (1 - poissonRatio ** 2));
}

/**
 * Stiffness per wall area of yielding connections, Pa/m, to be added to that of the cavity.
 *
 * Equation: 1/(C b) for lines, 1/(C e^2) for points. Units: C in m2/N or m/N, spacing in m. Source: mechanics.
 * Errors: ArgumentError for a compliance or spacing that is not above 0.
 */
export function connectionStiffness(kind: 'lines' | 'points', compliance: number, spacing: number): number {
  requireNumber('compliance of the connections', compliance, { above: 0 });
  requireNumber('spacing of the connections', spacing, { above: 0, unit: 'metres' });
  return 1 / (compliance * (kind === 'lines' ? spacing : spacing ** 2));
}

/**
 * Share of a movement that a mass on a damped spring takes over, no unit.
 *
 * Equation: T = sqrt[(1 + eta^2)/((1 - (f/f0)^2)^2 + eta^2)], eta the loss factor of the spring.
 * Source: single degree of freedom with hysteretic damping (common practice). 1 far below f0, 12 dB per octave above.
 * Errors: ArgumentError for a frequency not above 0 or a loss factor not above 0.
 */
export function transmissibility(hz: number, resonanceHz: number, lossFactor: number): number {
  requireNumber('frequency', hz, { above: 0, unit: 'Hz' });
  requireNumber('resonance', resonanceHz, { above: 0, unit: 'Hz' });
  requireNumber('loss factor of the spring', lossFactor, { above: 0 });
  return Math.sqrt((1 + lossFactor ** 2) / ((1 - (hz / resonanceHz) ** 2) ** 2 + lossFactor ** 2));
}
