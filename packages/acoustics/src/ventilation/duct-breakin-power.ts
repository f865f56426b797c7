import type { TransmissionLoss } from '../quantities/transmission-loss.js';
import { requireDuctOctaves } from './require-duct-octaves.js';

/**
 * Sound power that a noisy room sends each way along a duct through its walls, dB re 1 pW in the 8 octaves.
 *
 * Equation: Lw_in = Lw_on - R_in - 3 dB: half of what enters goes each way. Units: dB.
 * Source: the rule of the ASHRAE Handbook, HVAC Applications (from memory); the half each way is symmetry.
 * Valid: `on` is the sound power that falls on the walls of the duct; in a diffuse field Lp + 10 lg(S) - 6 dB, S in m2.
 * Errors: ArgumentError for a spectrum that isn't 8 numbers.
 */
export function ductBreakinPower(on: readonly number[], loss: TransmissionLoss): number[] {
  requireDuctOctaves('sound power on the duct', on);
  requireDuctOctaves('break-in loss', loss);
  return on.map((level, octave) => level - loss[octave]! - 3);
}
