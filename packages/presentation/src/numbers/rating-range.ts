import { soundTransmissionClass, weightedSoundReduction } from '@boothwright/acoustics';
import type { AssemblyResult } from '@boothwright/assessment';

export interface RatingRange {
  readonly stc: readonly [number, number];
  readonly rw: readonly [number, number];
}

/** The ratings of the curve with every band at the low and at the high end of its stated range. */
export function ratingRange(result: AssemblyResult): RatingRange {
  const shifted = (sign: 1 | -1) =>
    result.transmissionLossDb.map((loss, band) => loss + sign * (result.transmissionLossRangeDb[band] ?? 0));
  const low = shifted(-1);
  const high = shifted(1);
  return {
    stc: [soundTransmissionClass(low).stc, soundTransmissionClass(high).stc],
    rw: [weightedSoundReduction(low).rw, weightedSoundReduction(high).rw],
  };
}
