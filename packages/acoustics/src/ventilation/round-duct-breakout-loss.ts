import { requireNumber } from '../errors/require-number.js';
import { asTransmissionLoss, type TransmissionLoss } from '../quantities/transmission-loss.js';
import { ductWallRows } from './duct-wall-rows.js';

/** Up to this diameter the row of 200 mm speaks, m; nominal sizes are printed, a hair more is the same duct. */
const smaller = 0.202;
/** The largest duct of the rows, m. */
const largest = 0.303;

/**
 * Transmission loss of the wall of a round duct of sheet steel for sound that leaves it, dB in the 8 octaves 63 Hz to 8 kHz.
 *
 * Rule: the printed row of the next larger duct; a smaller tube of the same sheet is stiffer and keeps more in, so that the row
 * is the least. At 8 kHz, which is not printed, the value of 4 kHz. Units: m; result dB.
 * Source: `ductWallRows`, ASHRAE Handbook, HVAC Applications, 2019, chapter 49 (as transcribed); that the smaller tube keeps more
 * in is derived from its ring frequency, (E/rho)^(1/2)/(pi d).
 * Valid: bare steel of 0.5 mm or more, up to 0.3 m, without branches or open joints; at 63 Hz the row of 200 mm is printed as
 * "above 45" and taken as 45. Errors: ArgumentError for a larger duct or a diameter that can't be.
 *
 * @example
 * ```ts
 * import { roundDuctBreakoutLoss } from '@boothwright/acoustics/ventilation';
 *
 * roundDuctBreakoutLoss({ diameter: 0.125 })[4]; // 44
 * ```
 */
export function roundDuctBreakoutLoss({ diameter }: { readonly diameter: number }): TransmissionLoss {
  requireNumber('duct diameter', diameter, { above: 0, atMost: largest, unit: 'metres' });
  const name = diameter <= smaller ? 'round, 200 mm, 26 gauge' : 'spiral, 300 mm';
  const { losses } = ductWallRows.find((row) => row.name === name && row.way === 'out')!;
  return asTransmissionLoss(losses.map((loss, octave) => loss ?? losses[octave - 1]!));
}
