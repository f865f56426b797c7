import type { Air } from '../air/air-properties.js';

/** dB between normal and field incidence in third-octave bands; 4.0 dB is the value for octave bands. */
export const thirdOctaveFieldCorrection = 5.5;

/**
 * Transmission loss of a limp mass at normal incidence, dB.
 *
 * Equation: R0 = 10 lg(1 + (pi f m/(rho c))^2), f in Hz, m in kg/m2, rho c in Pa s/m.
 * Source: D.A. Bies, C.H. Hansen, C.Q. Howard: Engineering Noise Control, 5th ed. (2017), Eq. 7.40 (as transcribed).
 * Valid below coincidence and above the panel's own resonances.
 */
export function massLawNormal(hz: number, surfaceMass: number, air: Air): number {
  return 10 * Math.log10(1 + ((Math.PI * hz * surfaceMass) / air.impedance) ** 2);
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
