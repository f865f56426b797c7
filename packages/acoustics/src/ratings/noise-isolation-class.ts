import type { LevelDifference } from '../quantities/level-difference.js';
import { type ClassificationContourFit, classificationContourFit } from './classification-contour-fit.js';

/** A noise isolation class with the fit that led to it. */
export type NoiseIsolationClass = ClassificationContourFit & { readonly nic: number };

/**
 * Noise isolation class (NIC) of the level difference between two rooms.
 *
 * Rule: as in `soundTransmissionClass`, on the level difference instead of the transmission loss.
 * Units: dB; either the 21 bands of the working grid or the 16 bands from 125 Hz to 4 kHz.
 * Source: ASTM E413 (from memory, see `soundTransmissionClass`).
 * Valid: for the two rooms as they are, with their furniture; it moves with the absorption of the receiving room.
 * Errors: ArgumentError for a wrong number of bands or a value that is no number.
 */
export function noiseIsolationClass(levelDifference: LevelDifference): NoiseIsolationClass {
  const { rating, ...fit } = classificationContourFit('level difference', levelDifference);
  return { nic: rating, ...fit };
}
