import type { Air } from '../air/air-properties.js';
import { requireNumber } from '../errors/require-number.js';

/** dB between normal and field incidence in third-octave bands; 4.0 dB is the value for octave bands. */
export const thirdOctaveFieldCorrection = 5.5;

/**
 * Transmission loss of a limp mass at normal incidence, dB.
 *
 * Equation: R0 = 10 lg(1 + (pi f m/(rho c))^2), f in Hz, m in kg/m2, rho c in Pa s/m.
 * Source: D.A. Bies, C.H. Hansen, C.Q. Howard: Engineering Noise Control, 5th ed. (2017), Eq. 7.40 (as transcribed).
 * Valid below coincidence and above the panel's own resonances.
 * Errors: ArgumentError for a frequency or mass below 0.
 *
 * @example
 * ```ts
 * import { airProperties } from '@boothwright/acoustics/air';
 * import { massLawNormal } from '@boothwright/acoustics/panels';
 *
 * const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
 * massLawNormal(500, 10, air); // 31.6
 * ```
 */
export function massLawNormal(hz: number, surfaceMass: number, air: Air): number {
  return 10 * Math.log10(1 + massRatio(hz, surfaceMass, air) ** 2);
}

/**
 * Transmission loss of a limp mass under field incidence, dB: `massLawNormal` minus a correction, never below 0 dB.
 *
 * Source: Bies, Hansen, Howard (2017), Eqs. 7.41-7.42: 5.5 dB in third octaves, 4.0 dB in octaves; M.P. Norton,
 * D.G. Karczub: Fundamentals of Noise and Vibration Analysis for Engineers, 2nd ed. (2003), Eq. 3.104: 5 dB (both as
 * transcribed).
 */
export function massLawField(
  hz: number,
  surfaceMass: number,
  air: Air,
  correctionDb: number = thirdOctaveFieldCorrection,
): number {
  return Math.max(0, massLawNormal(hz, surfaceMass, air) - correctionDb);
}

/**
 * Transmission loss of a limp mass for a plane wave at an angle from the normal, dB.
 *
 * Equation: R = 10 lg(1 + (pi f m cos(theta)/(rho c))^2), f in Hz, m in kg/m2, theta in degrees.
 * Source: common practice, in every textbook of building acoustics. Valid as `massLawNormal`; 0 dB at grazing incidence.
 * Errors: ArgumentError for an angle outside 0 .. 90 degrees.
 */
export function massLawOblique(hz: number, surfaceMass: number, angleDeg: number, air: Air): number {
  requireNumber('angle of incidence', angleDeg, { atLeast: 0, atMost: 90, unit: 'degrees' });
  const cosine = Math.cos((angleDeg * Math.PI) / 180);
  return 10 * Math.log10(1 + (massRatio(hz, surfaceMass, air) * cosine) ** 2);
}

/**
 * Transmission loss of a limp mass in a diffuse field whose directions end at a limiting angle, dB.
 *
 * Equation: tau = ln[(1 + a^2)/(1 + a^2 cos^2(limit))]/(a^2 sin^2(limit)), a = pi f m/(rho c): the integral of
 * `massLawOblique` over sin^2(theta), in closed form. At 90 degrees it is the random-incidence mass law, near
 * R0 - 10 lg(0.23 R0); near 78 degrees it is about R0 - 5 dB.
 * Units: Hz, kg/m2, degrees. Source: common practice (derived).
 * Valid as `massLawNormal`; an infinite panel, so 90 degrees is too low for panels of usual size.
 * Errors: ArgumentError for an angle that is not above 0 and up to 90 degrees.
 */
export function massLawLimited(hz: number, surfaceMass: number, limitDeg: number, air: Air): number {
  requireNumber('limiting angle', limitDeg, { above: 0, atMost: 90, unit: 'degrees' });
  const square = massRatio(hz, surfaceMass, air) ** 2;
  const sine = Math.sin((limitDeg * Math.PI) / 180) ** 2;
  // (1 + a^2)/(1 + a^2 cos^2) - 1, kept apart so that a light sheet loses no digits.
  const excess = (square * sine) / (1 + square * (1 - sine));
  return excess === 0 ? 0 : -10 * Math.log10(Math.log1p(excess) / (square * sine));
}

/** `massLawLimited` over all directions: the random-incidence mass law, dB. */
export function massLawRandom(hz: number, surfaceMass: number, air: Air): number {
  return massLawLimited(hz, surfaceMass, 90, air);
}

/**
 * The mass law as a rule of thumb, dB.
 *
 * Equation: R = 20 lg(m f) - 47, m in kg/m2, f in Hz; -47 dB holds for air of about 20 degC.
 * Source: M.J. Crocker: Engineering Acoustics (2021), Sect. 12.2.2 as used in Example 12.13 (read second-hand).
 * Valid well above 10 dB. Errors: ArgumentError for a frequency or mass that is not above 0.
 */
export function massLawRuleOfThumb(hz: number, surfaceMass: number): number {
  requireNumber('frequency', hz, { above: 0, unit: 'Hz' });
  requireNumber('surface mass', surfaceMass, { above: 0, unit: 'kg/m2' });
  return 20 * Math.log10(surfaceMass * hz) - 47;
}

/**
 * Reactance of a mass over twice the impedance of air, pi f m/(rho c); no unit.
 * Errors: ArgumentError for a frequency or mass below 0.
 */
export function massRatio(hz: number, surfaceMass: number, air: Air): number {
  requireNumber('frequency', hz, { atLeast: 0, unit: 'Hz' });
  requireNumber('surface mass', surfaceMass, { atLeast: 0, unit: 'kg/m2' });
  return (Math.PI * hz * surfaceMass) / air.impedance;
}
