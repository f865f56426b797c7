import { fanCasingLoss } from './fan-sound-power.js';
import { requireDuctOctaves } from './require-duct-octaves.js';

/**
 * Sound power that a fan radiates through its casing, dB re 1 pW in the 8 octaves 63 Hz to 8 kHz.
 *
 * Equation: Lw less `fanCasingLoss`. Units: dB.
 * Source: M. Long, Architectural Acoustics, 2nd ed., 2014, Table 13.8 (as transcribed).
 * Valid: closed metal casings with both openings ducted away. Errors: ArgumentError for a spectrum that isn't 8 numbers.
 */
export function fanCasingPower(power: readonly number[]): number[] {
  requireDuctOctaves('sound power of the fan', power);
  return power.map((level, octave) => level - fanCasingLoss[octave]!);
}
