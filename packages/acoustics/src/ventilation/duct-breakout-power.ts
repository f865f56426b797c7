import { requireNumber } from '../errors/require-number.js';
import type { TransmissionLoss } from '../quantities/transmission-loss.js';
import { requireDuctOctaves } from './require-duct-octaves.js';

/**
 * Sound power that leaves a duct through its walls, dB re 1 pW in the 8 octaves 63 Hz to 8 kHz.
 *
 * Equation: Lw_out = Lw_in - R_out + 10 lg(S/A), S the wall inside the room, A the free section; at most Lw_in - 3 dB.
 * Units: Lw and R dB, areas m2.
 * Source: the rule of the ASHRAE Handbook, HVAC Applications, with its bound (from memory).
 * Valid: the level is that at the start of the piece and isn't lowered along it, which errs to the loud side.
 * Errors: ArgumentError for an area that can't be or a spectrum that isn't 8 numbers.
 */
export function ductBreakoutPower(
  power: readonly number[],
  loss: TransmissionLoss,
  { wallArea, section }: { readonly wallArea: number; readonly section: number },
): number[] {
  requireDuctOctaves('sound power in the duct', power);
  requireDuctOctaves('breakout loss', loss);
  requireNumber('wall area of the duct', wallArea, { above: 0, unit: 'square metres' });
  requireNumber('duct area', section, { above: 0, unit: 'square metres' });
  const spread = 10 * Math.log10(wallArea / section);
  return power.map((level, octave) => Math.min(level - 3, level - loss[octave]! + spread));
}
