import { soundTransmissionClass, weightedSoundReduction } from '@boothwright/acoustics';
import type { SingleNumberRatings } from '../result/result-document.js';

/** The single numbers of a curve on the 21-band grid. */
export function ratingsOf(transmissionLoss: readonly number[]): SingleNumberRatings {
  const { stc, governedBy } = soundTransmissionClass(transmissionLoss);
  const { rw, c, ctr, c50To5000, ctr50To5000 } = weightedSoundReduction(transmissionLoss);
  return { stc, stcGovernedBy: governedBy, rw, c, ctr, c50To5000, ctr50To5000 };
}
