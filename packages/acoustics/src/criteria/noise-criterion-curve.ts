/**
 * The NC curves in steps of 5, octave bands 63 Hz to 4 kHz, dB. Source: the classic family (Beranek 1957) as printed in
 * the table page "Noise Criteria (NC) Curves", 2018. Newer tables differ by 1 dB in a few cells.
 */
const curves: readonly (readonly number[])[] = [
  [47, 36, 29, 22, 17, 14, 12],
  [51, 40, 33, 26, 22, 19, 17],
  [54, 44, 37, 31, 27, 24, 22],
  [57, 48, 41, 35, 31, 29, 28],
  [60, 52, 45, 40, 36, 34, 33],
  [64, 56, 50, 45, 41, 39, 38],
  [67, 60, 54, 49, 46, 44, 43],
  [71, 64, 58, 54, 51, 49, 48],
  [74, 67, 62, 58, 56, 54, 53],
  [77, 71, 67, 63, 61, 59, 58],
  [80, 75, 71, 68, 66, 64, 63],
  [83, 79, 75, 72, 71, 70, 69],
];

/** The lowest curve that is tabulated. */
export const lowestNoiseCriterion = 15;
/** The highest curve that is tabulated. */
export const highestNoiseCriterion = 70;
/** Octave bands, nominal Hz, that the rating doesn't look at although the newest curves reach into some of them. */
export const noiseCriterionNotAssessedHz: readonly number[] = [16, 31.5, 8000];

/**
 * An NC curve, between the printed ones by linear interpolation.
 *
 * Units: NC number in, octave band levels in dB out, 63 Hz to 4 kHz (7 bands).
 * Source: Beranek's NC curves as printed in "Noise Criteria (NC) Curves", 2018; interpolation is common practice.
 * Valid: NC 15 to NC 70. The 16, 31.5 and 8000 Hz bands are left out.
 * Errors: RangeError outside NC 15 .. 70.
 */
export function noiseCriterionCurve(nc: number): number[] {
  if (!(nc >= lowestNoiseCriterion && nc <= highestNoiseCriterion)) {
    throw new RangeError(`NC is ${nc}, expected a number from ${lowestNoiseCriterion} to ${highestNoiseCriterion}`);
  }
  const position = (nc - lowestNoiseCriterion) / 5;
  const below = Math.min(Math.floor(position), curves.length - 2);
  const part = position - below;
  return curves[below]!.map((level, band) => level + part * (curves[below + 1]![band]! - level));
}
