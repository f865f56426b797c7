import type { Air } from '../air/air-properties.js';
import { ArgumentError } from '../errors/argument-error.js';
import { requireNumber } from '../errors/require-number.js';
import { massLawField } from './mass-law.js';

/** A material of the plateau method. */
export type PlateauMaterial = {
  /** kg/m2 for each mm of thickness */
  readonly massPerMillimetre: number;
  /** dB, height of the plateau */
  readonly plateau: number;
  /** Upper over lower end of the plateau, a ratio of frequencies. */
  readonly ratio: number;
};

/**
 * Materials of the plateau method.
 *
 * Source: M.P. Norton, D.G. Karczub: Fundamentals of Noise and Vibration Analysis for Engineers, 2nd ed. (2003), Table 3.1
 * (as transcribed).
 */
export const plateauMaterials = {
  aluminium: { massPerMillimetre: 2.66, plateau: 29, ratio: 11 },
  brick: { massPerMillimetre: 2.1, plateau: 37, ratio: 4.5 },
  concrete: { massPerMillimetre: 2.28, plateau: 38, ratio: 4.5 },
  glass: { massPerMillimetre: 2.47, plateau: 27, ratio: 10 },
  lead: { massPerMillimetre: 11.2, plateau: 56, ratio: 4 },
  plaster: { massPerMillimetre: 1.71, plateau: 30, ratio: 8 },
  plywood: { massPerMillimetre: 0.57, plateau: 19, ratio: 6.5 },
  steel: { massPerMillimetre: 7.6, plateau: 40, ratio: 11 },
} as const satisfies Record<string, PlateauMaterial>;

/** dB below normal incidence that the method takes for field incidence (Norton and Karczub, Eq. 3.104, as transcribed). */
export const plateauFieldCorrection = 5;

/**
 * Transmission loss of a single wall by the plateau method, dB.
 *
 * Equation: field-incidence mass law (5 dB below normal incidence) up to frequency A where it meets the plateau; the
 * plateau up to B = ratio A; above B the plateau plus 10 dB per octave.
 * Units: thickness in m, Hz.
 * Source: Norton, Karczub (2003), Table 3.1 and problem 3.11 (as transcribed).
 * Valid as a first guess for large flat walls of the listed materials; it knows nothing of size and damping.
 * Errors: ArgumentError for a thickness or frequency that is not above 0, or no material.
 */
export function plateauTransmissionLoss(material: PlateauMaterial, thickness: number, hz: number, air: Air): number {
  requireMaterial(material);
  requireNumber('thickness of the wall', thickness, { above: 0, unit: 'metres' });
  requireNumber('frequency', hz, { above: 0, unit: 'Hz' });
  const mass = material.massPerMillimetre * thickness * 1000;
  const start =
    (air.impedance * Math.sqrt(10 ** ((material.plateau + plateauFieldCorrection) / 10) - 1)) / (Math.PI * mass);
  if (hz <= start) return massLawField(hz, mass, air, plateauFieldCorrection);
  const end = material.ratio * start;
  return hz <= end ? material.plateau : material.plateau + 10 * Math.log2(hz / end);
}

function requireMaterial(material: unknown): asserts material is PlateauMaterial {
  if (typeof material !== 'object' || material === null) {
    const names = Object.keys(plateauMaterials).join(', ');
    throw new ArgumentError('plateau material', material, `an entry of plateauMaterials, which are ${names}`);
  }
  const { massPerMillimetre, plateau, ratio } = material as PlateauMaterial;
  requireNumber('mass of the material', massPerMillimetre, { above: 0, unit: 'kg/m2 for each mm' });
  requireNumber('plateau of the material', plateau, { atLeast: 0, unit: 'decibels' });
  requireNumber('ratio of the ends of the plateau', ratio, { atLeast: 1 });
}
