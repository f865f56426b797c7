import { octaveBands } from '../bands/bands.js';
import { requireBands } from '../bands/require-bands.js';
import { highestNoiseCriterion, lowestNoiseCriterion, noiseCriterionCurve } from './noise-criterion-curve.js';

/** A noise criterion rating: the curve, and the octave that decides it. */
export type NoiseCriterion = {
  /** Null when the spectrum lies below the lowest or above the highest curve. */
  readonly value: number | null;
  /** `NC 17`, `below NC 15` or `above NC 70`. */
  readonly text: string;
  /** Nominal Hz of the band that touches the highest curve; null when no curve is touched. */
  readonly governingHz: number | null;
};

const printed = Array.from({ length: 12 }, (_, index) => lowestNoiseCriterion + 5 * index);
const printedCurves = printed.map(noiseCriterionCurve);

/**
 * Noise criterion (NC) of a background noise, by the tangency method.
 *
 * Rule: in each octave band the level lies on one NC curve, between printed curves by linear interpolation; the rating
 * is the highest of these numbers. `text` rounds it to a whole number, `value` does not.
 * Units: octave band levels in dB, 63 Hz to 4 kHz (7 bands). Minus infinity, silence, is allowed.
 * Source: ANSI/ASA S12.2 and M. J. Crocker, Engineering Acoustics, 2021, section 6 (tangency, as transcribed); curves as
 * in `noiseCriterionCurve`.
 * Valid: NC 15 to NC 70; outside, there is no number. The 16, 31.5 and 8000 Hz bands are not assessed, so rumble below
 * 45 Hz passes unseen. The speech-interference shortcut of ANSI/ASA S12.2 isn't used.
 * Errors: RangeError for a wrong number of bands or a value that is no number.
 */
export function noiseCriterion(octaveLevels: readonly number[]): NoiseCriterion {
  requireBands('octave band level', octaveLevels, [octaveBands.length], { silence: true });
  const lowest = printedCurves[0]!;
  const highest = printedCurves.at(-1)!;
  const excess = octaveLevels.map((level, band) => level - highest[band]!);
  const largestExcess = Math.max(...excess);
  if (largestExcess > 0) {
    return {
      value: null,
      text: `above NC ${highestNoiseCriterion}`,
      governingHz: octaveBands[excess.indexOf(largestExcess)]!.nominal,
    };
  }
  let value = Number.NEGATIVE_INFINITY;
  let governingHz: number | null = null;
  octaveLevels.forEach((level, band) => {
    if (level < lowest[band]!) return;
    const above = Math.max(
      1,
      printedCurves.findIndex((curve) => level <= curve[band]!),
    );
    const from = printedCurves[above - 1]![band]!;
    const to = printedCurves[above]![band]!;
    const number = printed[above - 1]! + (5 * (level - from)) / (to - from);
    if (number > value) {
      value = number;
      governingHz = octaveBands[band]!.nominal;
    }
  });
  if (governingHz === null) return { value: null, text: `below NC ${lowestNoiseCriterion}`, governingHz };
  return { value, text: `NC ${Math.round(value)}`, governingHz };
}
