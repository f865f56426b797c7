import { meanLevel } from '../levels/mean-level.js';
import { asTransmissionLoss, type TransmissionLoss } from '../quantities/transmission-loss.js';
import { octaveBands, thirdOctaveBands } from './bands.js';
import { requireBands } from './require-bands.js';
import { thirdsOfOctave } from './thirds-of-octave.js';

/**
 * Transmission loss in octaves, for sound that has the same level in the three thirds of each octave.
 *
 * Equation: R_octave = -10 lg of the mean of 10^(-R/10) over the three thirds.
 * Units: dB; 21 thirds in, 7 octaves out.
 * Source: energy identity (as in ISO 717-1, annex on octave values; from memory).
 * Errors: ArgumentError for a wrong number of bands or a value that is no number.
 */
export function octaveTransmissionLoss(transmissionLoss: readonly number[]): TransmissionLoss {
  requireBands('transmission loss', transmissionLoss, [thirdOctaveBands.length], {});
  return asTransmissionLoss(
    octaveBands.map((_, octave) => 0 - meanLevel(thirdsOfOctave(octave).map((index) => -transmissionLoss[index]!))),
  );
}
