import { requireBands } from '../bands/require-bands.js';

/** A sound transmission class with the fit that led to it. */
export type SoundTransmissionClass = {
  readonly stc: number;
  /** Nominal Hz of the 16 bands that the other lists follow. */
  readonly bands: readonly number[];
  /** The fitted contour, dB. */
  readonly contour: readonly number[];
  /** The transmission loss as fitted: rounded to whole dB. */
  readonly rounded: readonly number[];
  /** How far the rounded transmission loss stays below the contour, dB. */
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

/** Sums of decimal figures can fall a few parts in 1e15 short of the half that was meant. */
function roundHalfUp(value: number): number {
  return Math.floor(value + 0.5 + 1e-9);
}

/**
 * Sound transmission class (STC) of a transmission loss; the same fit gives NIC for a noise reduction.
 *
 * Rule: the transmission loss, rounded to whole dB (half up), is compared with a contour of fixed shape, 125 Hz to
 * 4 kHz; the class is the 500 Hz value of the highest contour, in steps of 1 dB, for which the deficiencies sum to
 * 32 dB at most and none is above 8 dB.
 * Units: dB; either the 21 bands of the working grid or the 16 bands from 125 Hz to 4 kHz.
 * Source: ASTM E413 (contour and rules from memory; confirmed by secondary pages and by three laboratory reports whose
 * printed deficiencies they meet).
 * Valid: for airborne sound like speech; says nothing of sound below 112 Hz.
 * Errors: RangeError for a wrong number of bands or a value that is no number.
 *
 * @example
 * ```ts
 * import { soundTransmissionClass } from '@boothwright/acoustics/ratings';
 *
 * // Third octaves from 125 Hz to 4 kHz; invented round numbers.
 * const loss = [20, 22, 25, 28, 31, 34, 37, 40, 42, 44, 46, 48, 50, 52, 53, 54];
 * soundTransmissionClass(loss).stc; // 39
 * soundTransmissionClass(loss).governedBy; // 'sum'
 * ```
 */
export function soundTransmissionClass(transmissionLoss: readonly number[]): SoundTransmissionClass {
  requireBands('transmission loss', transmissionLoss, [21, 16], {});
  const used = transmissionLoss.length === 21 ? transmissionLoss.slice(first, first + 16) : transmissionLoss;
  const rounded = used.map(roundHalfUp);
  const against = (stc: number) => {
    const deficiencies = rounded.map((value, index) => Math.max(0, stc + contourShape[index]! - value));
    const sum = deficiencies.reduce((total, value) => total + value, 0);
    return { deficiencies, sum, largest: Math.max(...deficiencies) };
  };

  // Just above the lowest band plus 8 dB no contour can be allowed, so the search comes down from there.
  let stc = Math.min(...rounded.map((value, index) => value - contourShape[index]!)) + largestDeficiency;
  let fit = against(stc);
  while (fit.sum > largestSum || fit.largest > largestDeficiency) fit = against(--stc);

  const next = against(stc + 1);
  return {
    stc,
    bands: contourBands,
    contour: contourShape.map((relative) => stc + relative),
    rounded,
    deficiencies: fit.deficiencies,
    deficiencySum: fit.sum,
    governedBy: next.sum > largestSum ? 'sum' : 'single-band',
    governingHz: contourBands[next.deficiencies.indexOf(next.largest)]!,
  };
}
