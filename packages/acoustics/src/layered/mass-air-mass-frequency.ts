import type { Air } from '../air/air-properties.js';
import { requireNumber } from '../errors/require-number.js';

/**
 * Resonance of two masses on the air between them, Hz.
 *
 * Equation: f0 = (1/2 pi) sqrt(rho c^2 (m1 + m2)/(m1 m2 d)); m in kg/m2, gap d in m.
 * Source: C. Hopkins: Sound Insulation (2007), Eq. 4.73; D.A. Bies, C.H. Hansen, C.Q. Howard: Engineering Noise Control,
 * 5th ed. (2017), Eq. 7.62 (both as transcribed). Valid for a gap much thinner than a wavelength, normal incidence.
 * Errors: ArgumentError for a mass or a gap that isn't above 0.
 * See also: `cavityResonances` for more leaves or an isothermal spring.
 *
 * @example
 * ```ts
 * import { airProperties } from '@boothwright/acoustics/air';
 * import { massAirMassFrequency } from '@boothwright/acoustics/layered';
 *
 * const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
 * massAirMassFrequency(8.75, 8.75, 0.09, air); // 95.5
 * ```
 */
export function massAirMassFrequency(m1: number, m2: number, gap: number, air: Air): number {
  requireNumber('first mass', m1, { above: 0, unit: 'kg/m2' });
  requireNumber('second mass', m2, { above: 0, unit: 'kg/m2' });
  requireNumber('gap', gap, { above: 0, unit: 'metres' });
  return Math.sqrt((air.density * air.soundSpeed ** 2 * (m1 + m2)) / (m1 * m2 * gap)) / (2 * Math.PI);
}
