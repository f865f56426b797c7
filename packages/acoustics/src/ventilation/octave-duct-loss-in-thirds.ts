import { asInsertionLoss } from '../quantities/insertion-loss.js';
import type { DuctLoss, DuctOctaveLoss } from './duct-loss.js';
import { octaveLossesToThirds } from './octave-losses-to-thirds.js';

/**
 * Loss of an element of an air path on the working grid of 21 thirds, from its octaves 63 Hz to 8 kHz.
 *
 * Equation: linear in dB over lg f between octave centres, as in `octaveLossesToThirds`. Units: dB.
 * Source: our own choice of interpolation; the sources give octaves only.
 * Errors: ArgumentError when there aren't 8 octaves, or a value is no number.
 */
export function octaveDuctLossInThirds({ octaves, validity }: DuctOctaveLoss): DuctLoss {
  return { loss: asInsertionLoss(octaveLossesToThirds(octaves)), validity };
}
