import { weightedTotal } from '@boothwright/acoustics';
import type { ByBand } from '../result/result-document.js';
import type { InsideNoise } from './capsule.js';
import { partlyUnknownOctaves, summedHalfWidth, summedSpectra } from './summed-spectra.js';

/** One sound inside. */
export interface SoundInside {
  readonly byBand: ByBand;
  readonly halfWidth: readonly number[];
  /** True for a machine inside, whose direct sound may come from the front of the microphone. */
  readonly near: boolean;
}

/** Sounds that are heard together. */
export interface NoiseMix {
  readonly total: ByBand;
  readonly halfWidth: readonly number[];
  readonly atMicrophone: InsideNoise;
  /** Octaves in which some sound is unknown, so that the total is a lower bound, nominal Hz. */
  readonly unknownOctaves: readonly number[];
}

export function noiseMix(sounds: readonly SoundInside[]): NoiseMix {
  const spectra = sounds.map(({ byBand }) => byBand);
  const part = (near: boolean) =>
    summedSpectra(sounds.filter((sound) => sound.near === near).map(({ byBand }) => byBand));
  return {
    total: summedSpectra(spectra),
    halfWidth: summedHalfWidth(
      spectra,
      sounds.map(({ halfWidth }) => halfWidth),
    ),
    atMicrophone: { spread: part(false), near: part(true) },
    unknownOctaves: partlyUnknownOctaves(spectra),
  };
}

/** Place of the loudest mix, A-weighted; unweighted where no A-weighted total is known. */
export function loudestMix(mixes: readonly NoiseMix[]): number {
  let best = 0;
  let highest = Number.NEGATIVE_INFINITY;
  mixes.forEach(({ total }, index) => {
    const level = weightedTotal(total, 'A') ?? Number.NEGATIVE_INFINITY;
    if (level <= highest) return;
    highest = level;
    best = index;
  });
  return best;
}
