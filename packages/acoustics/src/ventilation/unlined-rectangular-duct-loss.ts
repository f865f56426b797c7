import { requireNumber } from '../errors/require-number.js';
import { asInsertionLoss } from '../quantities/insertion-loss.js';
import type { DuctOctaveLoss } from './duct-loss.js';
import { ductOctaves, metresPerFoot, validityOf } from './duct-tables.js';

/** A straight rectangular duct of bare sheet metal. */
export type UnlinedRectangularDuct = {
  /** Free width and height, m. */
  readonly width: number;
  readonly height: number;
  readonly length: number;
};

/**
 * Attenuation of a bare rectangular duct of sheet metal.
 *
 * Equation: up to 250 Hz, 17.0 (P/S)^0.25 f^-0.85 l where P/S is 3 or more and 1.64 (P/S)^0.73 f^-0.58 l below;
 * above 250 Hz, 0.02 (P/S)^0.8 l. P/S in 1/ft, f the nominal octave in Hz, l in feet.
 * Units: lengths m; result dB in the 8 octaves 63 Hz to 8 kHz.
 * Source: M. Long, Architectural Acoustics, 2nd ed., 2014, equations 14.9 to 14.11 (as transcribed).
 * Valid: sheet-metal ducts without cladding. Board, masonry and plastic take less or other losses. Low-frequency
 * attenuation is sound that leaves through the walls: it arrives where the duct passes.
 * Errors: ArgumentError for a dimension that can't be.
 */
export function unlinedRectangularDuctOctaveLoss({ width, height, length }: UnlinedRectangularDuct): DuctOctaveLoss {
  requireNumber('duct width', width, { above: 0, unit: 'metres' });
  requireNumber('duct height', height, { above: 0, unit: 'metres' });
  requireNumber('duct length', length, { atLeast: 0, unit: 'metres' });
  const ratio = ((2 * (width + height)) / (width * height)) * metresPerFoot;
  const feet = length / metresPerFoot;
  const octaves = ductOctaves.map((hz) => {
    if (hz > 250) return 0.02 * ratio ** 0.8 * feet;
    return (ratio >= 3 ? 17 * ratio ** 0.25 * hz ** -0.85 : 1.64 * ratio ** 0.73 * hz ** -0.58) * feet;
  });
  return { octaves: asInsertionLoss(octaves), validity: validityOf([], []) };
}
