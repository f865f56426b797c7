import { requireBands } from '../bands/require-bands.js';
import { roundHalfUp } from './round-half-up.js';

/** The contour of the sound transmission class fitted to values. */
export type ClassificationContourFit = {
  /** Nominal Hz of the 16 bands that the other lists follow. */
  readonly bands: readonly number[];
  /** The fitted contour, dB. */
  readonly contour: readonly number[];
  /** The values as fitted: rounded to whole dB. */
  readonly rounded: readonly number[];
  /** How far the rounded values stay below the contour, dB. */
  readonly deficiencies: readonly number[];
  readonly deficiencySum: number;
  /**
   * The rule that forbids the next higher contour: `single-band` when only the 8 dB rule does, `sum` when the 32 dB
   * rule does, alone or together with the other.
   */
  readonly governedBy: 'sum' | 'single-band';
  /** Nominal Hz of the band with the largest deficiency against the next higher contour. */
  readonly governingHz: number;
};

const contourBands = [125, 160, 200, 250, 315, 400, 500, 630, 800, 1000, 1250, 1600, 2000, 2500, 3150, 4000];
const contourShape = [-16, -13, -10, -7, -4, -1, 0, 1, 2, 3, 4, 4, 4, 4, 4, 4];
const largestSum = 32;
const largestDeficiency = 8;
/** Index of 125 Hz on the working grid. */
const first = 4;

/** Fits the contour of ASTM E413 to the 21 bands of the working grid, or to the 16 from 125 Hz to 4 kHz. */
export function classificationContourFit(
  what: string,
  values: readonly number[],
): ClassificationContourFit & { readonly rating: number } {
  requireBands(what, values, [21, 16], {});
  const used = values.length === 21 ? values.slice(first, first + 16) : values;
  const rounded = used.map(roundHalfUp);
  const against = (rating: number) => {
    const deficiencies = rounded.map((value, index) => Math.max(0, rating + contourShape[index]! - value));
    const sum = deficiencies.reduce((total, value) => total + value, 0);
    return { deficiencies, sum, largest: Math.max(...deficiencies) };
  };

  // Just above the lowest band plus 8 dB no contour can be allowed, so the search comes down from there.
  let rating = Math.min(...rounded.map((value, index) => value - contourShape[index]!)) + largestDeficiency;
  let fit = against(rating);
  while (fit.sum > largestSum || fit.largest > largestDeficiency) fit = against(--rating);

  const next = against(rating + 1);
  return {
    rating,
    bands: contourBands,
    contour: contourShape.map((relative) => rating + relative),
    rounded,
    deficiencies: fit.deficiencies,
    deficiencySum: fit.sum,
    governedBy: next.sum > largestSum ? 'sum' : 'single-band',
    governingHz: contourBands[next.deficiencies.indexOf(next.largest)]!,
  };
}
