import { requireBands } from '../bands/require-bands.js';
import { sumLevels } from '../levels/sum-levels.js';
import type { PlainOrTransmissionLoss } from './plain-or-transmission-loss.js';
import { roundHalfUp } from './round-half-up.js';

/** An outdoor-indoor transmission class with what led to it. */
export type OutdoorIndoorTransmissionClass = {
  readonly oitc: number;
  /** The class before rounding, dB. */
  readonly unrounded: number;
  /** Nominal Hz of the 18 bands that the other lists follow. */
  readonly bands: readonly number[];
  /** The transmission loss as used: rounded to whole dB. */
  readonly rounded: readonly number[];
  /** A-weighted level behind the element, dB, for the reference source before it. */
  readonly transmitted: readonly number[];
  /** Nominal Hz of the band that lets most through. */
  readonly governingHz: number;
};

const oitcBands = [80, 100, 125, 160, 200, 250, 315, 400, 500, 630, 800, 1000, 1250, 1600, 2000, 2500, 3150, 4000];
/** Reference source of ASTM E1332: aircraft, road and rail together, dB; from memory. */
const source = [103, 102, 101, 98, 97, 95, 94, 93, 93, 91, 90, 89, 89, 88, 88, 87, 85, 84];
/** A-weighting to the printed tenth, IEC 61672-1:2013 Table 3, as transcribed. */
const weighting = [-22.5, -19.1, -16.1, -13.4, -10.9, -8.6, -6.6, -4.8, -3.2, -1.9, -0.8, 0, 0.6, 1, 1.2, 1.3, 1.2, 1];
/** A-weighted level of the source, dB, as the standard quotes it; from memory, and the sum of the two rows above. */
const sourceTotal = 100.13;
/** Index of 80 Hz on the working grid. */
const first = 2;

/**
 * Outdoor-indoor transmission class (OITC) of a transmission loss.
 *
 * Equation: OITC = 100.13 - 10 lg of the sum of 10^((L_f - R_f + A_f)/10), rounded to a whole number; R_f in whole dB.
 * Units: dB; either the 21 bands of the working grid or the 18 bands from 80 Hz to 4 kHz.
 * Source: ASTM E1332 (spectrum, constant and rule from memory; the spectrum sums to the constant).
 * Valid: for elements between a room and traffic noise.
 * Errors: ArgumentError for a wrong number of bands or a value that is no number.
 */
export function outdoorIndoorTransmissionClass<Values extends readonly number[]>(
  transmissionLoss: Values & PlainOrTransmissionLoss<Values>,
): OutdoorIndoorTransmissionClass {
  requireBands('transmission loss', transmissionLoss, [21, 18], {});
  const used = transmissionLoss.length === 21 ? transmissionLoss.slice(first, first + 18) : transmissionLoss;
  const rounded = used.map(roundHalfUp);
  const transmitted = rounded.map((value, band) => source[band]! + weighting[band]! - value);
  const unrounded = sourceTotal - sumLevels(transmitted);
  return {
    oitc: roundHalfUp(unrounded),
    unrounded,
    bands: oitcBands,
    rounded,
    transmitted,
    governingHz: oitcBands[transmitted.indexOf(Math.max(...transmitted))]!,
  };
}
