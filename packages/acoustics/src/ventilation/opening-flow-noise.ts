import { requireNumber } from '../errors/require-number.js';

/** The last piece of an air path, where it opens into a room. */
export type FlowOpening = {
  /** Air speed in the duct before it, m/s. */
  readonly speed: number;
  /** Face of the opening or the grille, m2. */
  readonly area: number;
  /** Pressure that the piece takes, from the duct to the room or the other way, Pa. */
  readonly pressure: number;
};

/** Peak of the spectrum over the speed of the air, 1/m, and its slopes, dB an octave. Source: as in `openingFlowNoise`. */
const peakPerSpeed = 160;
const slopes = { below: 3, above: 5 } as const;

/**
 * Octave sound power that air makes at the end of a duct, in a grille or diffuser, dB re 1 pW.
 *
 * Equation: Lw = 10 + 10 lg S + 30 lg dp in the octave of f_p = 160 U; from there 3 dB an octave less below and 5 dB above, the
 * octaves counted as lg2(f/f_p). With dp = K rho U^2/2 it rises with 60 lg U. Units: as of `FlowOpening`, octave frequency f Hz.
 * Source: CIBSE Guide B, 2005, section 5.A2.5, as quoted on a help page for it (the Guide itself was not opened). From memory the same
 * law stands in L. L. Beranek and I. L. Ver, Noise and Vibration Control Engineering, 1992, as an overall
 * level of 10 + 10 lg S + 30 lg K + 60 lg U, which lies 3 dB higher.
 * Valid: grilles and diffusers, no narrow slots; the power that enters the room, so that no end reflection is taken off. A
 * plain end, from which the air leaves as a smooth jet, makes less. C. M. Mak and others (Building Services Engineering Research
 * and Technology 30, 2009) found that one spectrum for all pieces fails at low frequency. No pressure, no sound: -Infinity.
 * Errors: ArgumentError for a quantity that can't be.
 *
 * @example
 * ```ts
 * import { openingFlowNoise } from '@boothwright/acoustics/ventilation';
 *
 * // 2.5 m/s before a grille of 0.04 m2 that takes 20 Pa: 35.1 dB where it peaks, at 400 Hz.
 * openingFlowNoise(400, { speed: 2.5, area: 0.04, pressure: 20 }); // 35.05
 * ```
 */
export function openingFlowNoise(hz: number, { speed, area, pressure }: FlowOpening): number {
  requireNumber('frequency', hz, { above: 0, unit: 'Hz' });
  requireNumber('air speed', speed, { above: 0, unit: 'metres per second' });
  requireNumber('area of the opening', area, { above: 0, unit: 'square metres' });
  requireNumber('pressure that the opening takes', pressure, { atLeast: 0, unit: 'Pa' });
  const octaves = Math.log2(hz / (peakPerSpeed * speed));
  const down = octaves < 0 ? -octaves * slopes.below : octaves * slopes.above;
  return 10 + 10 * Math.log10(area) + 30 * Math.log10(pressure) - down;
}
