import { levelOf } from '@boothwright/acoustics';
import { perBand } from '../bands/grid.js';
import type { AirPart } from '../result/noise-result.js';
import type { BandModel, ByBand } from '../result/result-document.js';
import { combinedHalfWidth } from '../uncertainty/combined.js';
import { insideFieldHalfWidth } from './fan.js';
import { summedSpectra } from './summed-spectra.js';

/** Noise that moving air makes inside the booth. */
export interface AirNoise {
  readonly byBand: ByBand;
  readonly halfWidth: readonly number[];
  readonly parts: readonly AirPart[];
}

/** Level in the booth of a sound power that is spread through it: L_p = L_W + 10 lg(4 / A), dB by band; A in m2. */
export function spreadInside(power: ByBand, absorptionArea: readonly number[]): ByBand {
  return power.map((level, band) => (level === null ? null : level + levelOf(4 / (absorptionArea[band] as number))));
}

/** All parts together with their range: that of the noise itself and that of the sound field inside, independent. */
export function airNoiseOf(
  parts: readonly AirPart[],
  noiseHalfWidth: number,
  bandModels: readonly BandModel[],
): AirNoise | undefined {
  if (parts.length === 0) return undefined;
  return {
    byBand: summedSpectra(parts.map(({ byBand }) => byBand)),
    halfWidth: perBand((band) => combinedHalfWidth(noiseHalfWidth, insideFieldHalfWidth(bandModels[band]))),
    parts,
  };
}
