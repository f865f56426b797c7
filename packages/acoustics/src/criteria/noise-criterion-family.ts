import { ArgumentError } from '../errors/argument-error.js';
import { requireOneOf } from '../errors/require-one-of.js';

/** The classic curves of 1957, or those of the newer standard. */
export type NoiseCriterionFamily = 'classic' | 's12.2';

/** The curves of one family. */
export type NoiseCriterionCurves = {
  /** Nominal Hz of the columns. */
  readonly octaves: readonly number[];
  /** Rows NC 15 to NC 70 in steps of 5, dB. */
  readonly curves: readonly (readonly number[])[];
  readonly origin: 'published' | 'from memory';
};

/**
 * NC curves in steps of 5, dB.
 *
 * Source, classic: Beranek 1957 as printed in the table page "Noise Criteria (NC) Curves", 2018.
 * Source, s12.2: ANSI/ASA S12.2 Table 1 from memory; of it the row NC-30, the mean of NC-40 from 500 Hz to 4 kHz and the
 * two highest cells of NC-70 were seen in a transcription of the 2019 edition, and agree.
 */
export const noiseCriterionFamilies: Readonly<Record<NoiseCriterionFamily, NoiseCriterionCurves>> = {
  classic: {
    octaves: [63, 125, 250, 500, 1000, 2000, 4000, 8000],
    curves: [
      [47, 36, 29, 22, 17, 14, 12, 11],
      [51, 40, 33, 26, 22, 19, 17, 16],
      [54, 44, 37, 31, 27, 24, 22, 21],
      [57, 48, 41, 35, 31, 29, 28, 27],
      [60, 52, 45, 40, 36, 34, 33, 32],
      [64, 56, 50, 45, 41, 39, 38, 37],
      [67, 60, 54, 49, 46, 44, 43, 42],
      [71, 64, 58, 54, 51, 49, 48, 47],
      [74, 67, 62, 58, 56, 54, 53, 52],
      [77, 71, 67, 63, 61, 59, 58, 57],
      [80, 75, 71, 68, 66, 64, 63, 62],
      [83, 79, 75, 72, 71, 70, 69, 68],
    ],
    origin: 'published',
  },
  's12.2': {
    octaves: [16, 31.5, 63, 125, 250, 500, 1000, 2000, 4000, 8000],
    curves: [
      [78, 61, 47, 36, 28, 22, 18, 14, 12, 11],
      [79, 63, 50, 40, 33, 26, 22, 20, 17, 16],
      [80, 65, 54, 44, 37, 31, 27, 24, 22, 22],
      [81, 68, 57, 48, 41, 35, 32, 29, 28, 27],
      [82, 71, 60, 52, 45, 40, 36, 34, 33, 32],
      [84, 74, 64, 56, 50, 44, 41, 39, 38, 37],
      [85, 76, 67, 60, 54, 49, 46, 44, 43, 42],
      [87, 79, 71, 64, 58, 54, 51, 49, 48, 47],
      [89, 82, 74, 67, 62, 58, 56, 54, 53, 52],
      [90, 85, 77, 71, 66, 63, 60, 59, 58, 57],
      [90, 88, 80, 75, 71, 68, 65, 64, 63, 62],
      [90, 90, 84, 79, 75, 72, 71, 70, 68, 68],
    ],
    origin: 'from memory',
  },
};

/** The lowest curve that is tabulated. */
export const lowestNoiseCriterion = 15;
/** The highest curve that is tabulated. */
export const highestNoiseCriterion = 70;

/**
 * An NC curve of either family over all its octaves, between the tabulated ones by linear interpolation.
 *
 * Units: NC number in; dB out, 8 octaves from 63 Hz (classic) or 10 from 16 Hz (s12.2), both to 8 kHz.
 * Source: `noiseCriterionFamilies`; interpolation is common practice.
 * Valid: NC 15 to NC 70.
 * Errors: ArgumentError outside NC 15 .. 70 or for a family that is not known.
 */
export function noiseCriterionCurveOf(family: NoiseCriterionFamily, nc: number): number[] {
  requireNoiseCriterionFamily(family);
  if (!(nc >= lowestNoiseCriterion && nc <= highestNoiseCriterion)) {
    throw new ArgumentError('NC', nc, `a number from ${lowestNoiseCriterion} to ${highestNoiseCriterion}`);
  }
  const { curves } = noiseCriterionFamilies[family];
  const position = (nc - lowestNoiseCriterion) / 5;
  const below = Math.min(Math.floor(position), curves.length - 2);
  const part = position - below;
  return curves[below]!.map((level, band) => level + part * (curves[below + 1]![band]! - level));
}

/** Rejects a name that is no family of curves. */
export function requireNoiseCriterionFamily(family: NoiseCriterionFamily): void {
  requireOneOf('family of NC curves', family, Object.keys(noiseCriterionFamilies));
}
