import { noiseShape, scaleToReading } from '@boothwright/acoustics';
import type { NoiseSource } from '@boothwright/language';
import { perBand } from '../bands/grid.js';
import { levelsOnGrid } from '../bands/level-table.js';
import type { ByBand } from '../result/result-document.js';

export type AirborneSource = Exclude<NoiseSource, { kind: 'impact' }>;
type ShapeName = Parameters<typeof noiseShape>[0];

/**
 * The levels around the booth in third octaves, dB: as stated by band, or a known shape scaled to the stated reading.
 * Every band is unknown where the reading is not a sound level with a weighting that can be scaled.
 */
export function outsideSpectrum(source: AirborneSource): ByBand {
  if (source.kind === 'bands') return levelsOnGrid(source.levels.value);
  const { weighting, decibels } = source.reading.value;
  if (weighting === 'FS' || weighting === 'NC') return perBand(() => null);
  return scaleToReading(noiseShape(source.shape.value as ShapeName), decibels, weighting === 'none' ? 'Z' : weighting);
}
