import {
  noiseCriterion,
  noiseShape,
  soundTransmissionClass,
  speechSpectrum,
  sumLevels,
  weightedSoundReduction,
  weightedTotal,
} from '../../src/index.js';
import type { PredictionGroup } from './prediction.js';
import { risingLoss } from './reference-inputs.js';

/** Levels, sources and single numbers. */
export const ratings: PredictionGroup = {
  'levels/sum': () => sumLevels([60, 63, 70]),
  'levels/a-weighted-speech': () => weightedTotal(speechSpectrum('normal'), 'A'),
  'sources/speech-raised': () => speechSpectrum('raised'),
  'sources/road-traffic': () => noiseShape('road-traffic'),
  'ratings/stc': () => soundTransmissionClass(risingLoss).stc,
  'ratings/rw-c-ctr': () => {
    const { rw, c, ctr } = weightedSoundReduction(risingLoss);
    return [rw, c, ctr];
  },
  'ratings/rw-enlarged-ranges': () => {
    const { c50To3150, ctr50To3150, c100To5000, ctr100To5000, c50To5000, ctr50To5000 } =
      weightedSoundReduction(risingLoss);
    return [c50To3150, ctr50To3150, c100To5000, ctr100To5000, c50To5000, ctr50To5000];
  },
  'criteria/nc': () => noiseCriterion([60, 50, 42, 36, 30, 26, 22]).value,
};
