import { outdoorIndoorTransmissionClass, soundTransmissionClass, weightedSoundReduction } from '@boothwright/acoustics';
import type { AssemblyResult } from '@boothwright/assessment';
import type { RatingName } from './shown.js';

/** A rating of a curve by the name under which a reader knows it. */
function ratingOf(name: RatingName, lossDb: readonly number[]): number {
  const curve = [...lossDb];
  switch (name) {
    case 'STC':
      return soundTransmissionClass(curve).stc;
    case 'OITC':
      return outdoorIndoorTransmissionClass(curve).oitc;
    default: {
      const { rw, c, ctr } = weightedSoundReduction(curve);
      return name === 'Rw' ? rw : name === 'Rw+C' ? rw + c : rw + ctr;
    }
  }
}

/** `STC 41`, `Rw+Ctr 33`. */
export function ratingText(name: RatingName, { ratings, transmissionLossDb }: AssemblyResult): string {
  if (name === 'OITC') return `OITC ${ratingOf(name, transmissionLossDb)}`;
  const { stc, rw, c, ctr } = ratings;
  return `${name} ${{ STC: stc, Rw: rw, 'Rw+C': rw + c, 'Rw+Ctr': rw + ctr }[name]}`;
}

/** The rating with every band at the low and at the high end of its range: `38 to 43`. */
export function ratingRangeText(name: RatingName, result: AssemblyResult): string {
  const [low, high] = [ratingOf(name, result.transmissionLossLowDb), ratingOf(name, result.transmissionLossHighDb)];
  return `${low} to ${high}`;
}
