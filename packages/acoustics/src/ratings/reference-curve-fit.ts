/** A reference curve fitted to values by the rule of the sum. */
export type ReferenceCurveFit = {
  /** Value of the shifted reference curve at 500 Hz, dB. */
  readonly rating: number;
  /** Nominal Hz of the bands that the lists follow. */
  readonly bands: readonly number[];
  /** The shifted reference curve, dB. */
  readonly contour: readonly number[];
  /** Unfavourable deviations, dB. */
  readonly deviations: readonly number[];
  readonly deviationSum: number;
  /** The only rule there is: the sum of unfavourable deviations. */
  readonly governedBy: 'sum';
  /** Nominal Hz of the band with the largest deviation against the next higher curve. */
  readonly governingHz: number;
};

type Reference = {
  readonly bands: readonly number[];
  readonly curve: readonly number[];
  /** All arithmetic is in whole tenths of a decibel, so that a sum of exactly 32.0 dB is met exactly. */
  readonly largestSumInTenths: number;
};

/** Nominal Hz of the 16 bands of the reference curve. */
export const ratingBands: readonly number[] = [
  100, 125, 160, 200, 250, 315, 400, 500, 630, 800, 1000, 1250, 1600, 2000, 2500, 3150,
];
/** ISO 717-1:2020 Table 3, thirds, dB (as transcribed; the printed page was not opened). */
export const thirdOctaveReference: Reference = {
  bands: ratingBands,
  curve: [33, 36, 39, 42, 45, 48, 51, 52, 53, 54, 55, 56, 56, 56, 56, 56],
  largestSumInTenths: 320,
};
/** ISO 717-1:2020 Table 3, octaves, dB (as transcribed; the printed page was not opened). */
export const octaveReference: Reference = {
  bands: [125, 250, 500, 1000, 2000],
  curve: [36, 45, 52, 55, 56],
  largestSumInTenths: 100,
};
const at500 = 52;

/**
 * Fits a reference curve of ISO 717-1 to values in whole tenths of a decibel, in steps of `stepInTenths`.
 *
 * Rule: the curve goes up as far as the sum of unfavourable deviations stays at or below 32.0 dB, in octaves 10.0 dB.
 */
export function referenceCurveFit(
  tenths: readonly number[],
  stepInTenths: number,
  { bands, curve, largestSumInTenths }: Reference,
): ReferenceCurveFit {
  const against = (shift: number) => {
    const deviations = tenths.map((value, index) => Math.max(0, 10 * curve[index]! + shift - value));
    return { deviations, sum: deviations.reduce((total, value) => total + value, 0) };
  };
  // No single deviation can exceed the allowed sum, which bounds the shift from above.
  const lowest = Math.min(...tenths.map((value, index) => value - 10 * curve[index]!));
  let shift = Math.ceil((lowest + largestSumInTenths) / stepInTenths) * stepInTenths;
  let fit = against(shift);
  while (fit.sum > largestSumInTenths) {
    shift -= stepInTenths;
    fit = against(shift);
  }
  const next = against(shift + stepInTenths).deviations;
  return {
    rating: (10 * at500 + shift) / 10,
    bands,
    contour: curve.map((value) => (10 * value + shift) / 10),
    deviations: fit.deviations.map((value) => value / 10),
    deviationSum: fit.sum / 10,
    governedBy: 'sum',
    governingHz: bands[next.indexOf(Math.max(...next))]!,
  };
}
