export type ReferenceCurveFit = {
  /** Value of the shifted reference curve at 500 Hz, dB. */
  readonly rating: number;
  /** The shifted reference curve, dB, 100 Hz to 3.15 kHz. */
  readonly contour: readonly number[];
  /** Unfavourable deviations, dB. */
  readonly deviations: readonly number[];
  readonly deviationSum: number;
};

/** Nominal Hz of the 16 bands of the reference curve. */
export const ratingBands: readonly number[] = [
  100, 125, 160, 200, 250, 315, 400, 500, 630, 800, 1000, 1250, 1600, 2000, 2500, 3150,
];
/** ISO 717-1:2020 Table 3, dB (as transcribed; the printed page was not opened). */
const referenceCurve = [33, 36, 39, 42, 45, 48, 51, 52, 53, 54, 55, 56, 56, 56, 56, 56];
const at500 = 52;
/** All arithmetic is in whole tenths of a decibel, so that a sum of exactly 32.0 dB is met exactly. */
const largestSumInTenths = 320;

/**
 * Fits the reference curve of ISO 717-1 to 16 values in whole tenths of a decibel, in steps of `stepInTenths`.
 *
 * Rule: the curve goes up as far as the sum of unfavourable deviations stays at or below 32.0 dB.
 */
export function referenceCurveFit(tenths: readonly number[], stepInTenths: number): ReferenceCurveFit {
  const against = (shift: number) => {
    const deviations = tenths.map((value, index) => Math.max(0, 10 * referenceCurve[index]! + shift - value));
    return { deviations, sum: deviations.reduce((total, value) => total + value, 0) };
  };
  // No single deviation can exceed the allowed sum, which bounds the shift from above.
  const lowest = Math.min(...tenths.map((value, index) => value - 10 * referenceCurve[index]!));
  let shift = Math.ceil((lowest + largestSumInTenths) / stepInTenths) * stepInTenths;
  let fit = against(shift);
  while (fit.sum > largestSumInTenths) {
    shift -= stepInTenths;
    fit = against(shift);
  }
  return {
    rating: (10 * at500 + shift) / 10,
    contour: referenceCurve.map((value) => (10 * value + shift) / 10),
    deviations: fit.deviations.map((value) => value / 10),
    deviationSum: fit.sum / 10,
  };
}
