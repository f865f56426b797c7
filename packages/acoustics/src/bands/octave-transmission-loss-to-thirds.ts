import { asTransmissionLoss, type TransmissionLoss } from '../quantities/transmission-loss.js';
import { octaveBands } from './bands.js';
import { requireBands } from './require-bands.js';

/**
 * Transmission loss in thirds from octaves, the same in the three thirds of an octave.
 *
 * Units: dB; 7 octaves in, 21 thirds out.
 * Source: an assumption (common practice), as an octave says nothing of its inside; `octaveTransmissionLoss` undoes it.
 * A narrow dip is smoothed away, so ratings found from the result are estimates.
 * Errors: ArgumentError for a wrong number of bands or a value that is no number.
 */
export function octaveTransmissionLossToThirds(transmissionLoss: readonly number[]): TransmissionLoss {
  requireBands('octave transmission loss', transmissionLoss, [octaveBands.length], {});
  return asTransmissionLoss(transmissionLoss.flatMap((value) => [value, value, value]));
}
