import { highestNoiseCriterion, lowestNoiseCriterion } from './noise-criterion-family.js';

/** A noise criterion rating: the curve, and the octave that decides it. */
export type NoiseCriterion = {
  /** Null when the spectrum lies below the lowest or above the highest curve. */
  readonly value: number | null;
  /** `NC 17`, `below NC 15` or `above NC 70`. */
  readonly text: string;
  /** Nominal Hz of the band that touches the highest curve; null when no curve is touched. */
  readonly governingHz: number | null;
};

/** Highest NC curve that a spectrum touches; levels, octaves and the columns of the curves in step. */
export function tangency(
  levels: readonly number[],
  octaves: readonly number[],
  curves: readonly (readonly number[])[],
): NoiseCriterion {
  const lowest = curves[0]!;
  const excess = levels.map((level, band) => level - curves.at(-1)![band]!);
  const largestExcess = Math.max(...excess);
  if (largestExcess > 0) {
    const governingHz = octaves[excess.indexOf(largestExcess)]!;
    return { value: null, text: `above NC ${highestNoiseCriterion}`, governingHz };
  }
  let value = Number.NEGATIVE_INFINITY;
  let governingHz: number | null = null;
  levels.forEach((level, band) => {
    if (level < lowest[band]!) return;
    const above = Math.max(
      1,
      curves.findIndex((curve) => level <= curve[band]!),
    );
    const from = curves[above - 1]![band]!;
    const to = curves[above]![band]!;
    // Two neighbouring curves can share a cell at the top of the lowest octaves; the lower of them is touched.
    const part = to === from ? 0 : (level - from) / (to - from);
    const number = lowestNoiseCriterion + 5 * (above - 1 + part);
    if (number > value) {
      value = number;
      governingHz = octaves[band]!;
    }
  });
  if (governingHz === null) return { value: null, text: `below NC ${lowestNoiseCriterion}`, governingHz };
  return { value, text: `NC ${Math.round(value)}`, governingHz };
}
