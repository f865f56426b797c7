import { requireBands } from '../bands/require-bands.js';
import type { LevelDifference } from '../quantities/level-difference.js';
import { type WeightedRating, weightedRating } from './weighted-rating.js';
import { weightedRatingOctaves } from './weighted-rating-octaves.js';
import { weightedSoundReduction } from './weighted-sound-reduction.js';

/** A weighted level difference with its adaptation terms and the fit that led to it. */
export type WeightedLevelDifference = Omit<WeightedRating, 'rw'> & {
  /** Dw, Dn,w, DnT,w or Dp,w, whole dB, as what was given was D, Dn, DnT or Dp. */
  readonly weighted: number;
  /** Adaptation terms over the enlarged ranges; null when the bands given don't reach so far. */
  readonly enlarged: {
    readonly c50To3150: number;
    readonly ctr50To3150: number;
    readonly c100To5000: number;
    readonly ctr100To5000: number;
    readonly c50To5000: number;
    readonly ctr50To5000: number;
  } | null;
};

/**
 * Weighted level difference: Dw of D, Dn,w of Dn, DnT,w of DnT, and Dp,w of a cabin's sound pressure insulation Dp.
 *
 * Rule: as in `weightedSoundReduction`.
 * Units: dB in, whole dB out; 21 thirds from 50 Hz, 16 thirds from 100 Hz, or 5 octaves from 125 Hz.
 * Source: ISO 717-1 (as transcribed); ISO 11957 rates Dp by the same rule (as two laboratory reports do).
 * Errors: ArgumentError for a wrong number of bands or a value that is no number.
 */
export function weightedLevelDifference(levelDifference: LevelDifference): WeightedLevelDifference {
  requireBands('level difference', levelDifference, [21, 16, 5], {});
  if (levelDifference.length === 21) {
    const { rw, c50To3150, ctr50To3150, c100To5000, ctr100To5000, c50To5000, ctr50To5000, ...rating } =
      weightedSoundReduction([...levelDifference]);
    const enlarged = { c50To3150, ctr50To3150, c100To5000, ctr100To5000, c50To5000, ctr50To5000 };
    return { weighted: rw, ...rating, enlarged };
  }
  const rate = levelDifference.length === 5 ? weightedRatingOctaves : weightedRating;
  const { rw, ...rating } = rate(levelDifference);
  return { weighted: rw, ...rating, enlarged: null };
}
