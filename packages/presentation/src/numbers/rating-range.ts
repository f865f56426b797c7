import { soundTransmissionClass, weightedSoundReduction } from '@boothwright/acoustics';
import type { AssemblyResult } from '@boothwright/assessment';

export interface RatingRange {
  readonly stc: readonly [number, number];
  readonly rw: readonly [number, number];
}

/** The ratings of the curve with every band at the low and at the high end of its stated range. */
export function ratingRange(result: AssemblyResult): RatingRange {
  const low = [...result.transmissionLossLowDb];
  const high = [...result.transmissionLossHighDb];
  return {
    stc: [soundTransmissionClass(low).stc, soundTransmissionClass(high).stc],
    rw: [weightedSoundReduction(low).rw, weightedSoundReduction(high).rw],
  };
}
