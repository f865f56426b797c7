import { requireNumber } from '../errors/require-number.js';
import { asInsertionLoss } from '../quantities/insertion-loss.js';
import type { DuctOctaveLoss } from './duct-loss.js';
import { ductOctaves, metresPerFoot, validityOf } from './duct-tables.js';

/**
 * Attenuation of a bare round duct of sheet metal.
 *
 * Rule: 0.03 dB/ft up to 250 Hz, 0.05 at 500 Hz, 0.07 above. Units: length m; result dB in the 8 octaves.
 * Source: M. Long, Architectural Acoustics, 2nd ed., 2014, Table 14.1 (as transcribed).
 * Valid: rigid round sheet-metal duct. Errors: ArgumentError for a length that can't be.
 */
export function unlinedRoundDuctOctaveLoss(length: number): DuctOctaveLoss {
  requireNumber('duct length', length, { atLeast: 0, unit: 'metres' });
  const perFoot = ductOctaves.map((hz) => (hz <= 250 ? 0.03 : hz <= 500 ? 0.05 : 0.07));
  return {
    octaves: asInsertionLoss(perFoot.map((loss) => (loss * length) / metresPerFoot)),
    validity: validityOf([], []),
  };
}
