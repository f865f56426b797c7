import { thirdOctaveBands } from '../bands/bands.js';
import { ductOctaves } from './duct-tables.js';
import { requireDuctOctaves } from './require-duct-octaves.js';

/**
 * Losses at the thirds of the working grid from losses in the octaves 63 Hz to 8 kHz.
 *
 * Equation: linear in the loss and in lg f between the octave centres. The 50 Hz third lies below the lowest centre but
 * inside that octave, and takes its value.
 * Units: dB; 8 octaves in, 21 thirds out.
 * Source: interpolation is our own choice; the sources give octaves only. A third can differ from the octave's value
 * by several dB where the loss changes fast, and the energy mean over an octave is then not exactly the printed one.
 * Errors: ArgumentError when there aren't 8 octaves, or a value is no number.
 */
export function octaveLossesToThirds(losses: readonly number[]): number[] {
  requireDuctOctaves('loss', losses);
  const last = ductOctaves.length - 1;
  return thirdOctaveBands.map(({ exact }) => {
    // Octave centres are 3/10 apart in lg f; the exact 63 Hz centre is 10^1.8 Hz.
    const position = Math.min(Math.max((Math.log10(exact) - 1.8) / 0.3, 0), last);
    const below = Math.min(Math.floor(position), last - 1);
    return losses[below]! + (position - below) * (losses[below + 1]! - losses[below]!);
  });
}
