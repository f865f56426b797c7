import { noiseShape, octaveBands, scaleToReading, thirdOctaveBands } from '@boothwright/acoustics';
import type { NoiseSource } from '@boothwright/language';
import { perBand } from '../bands/grid.js';
import { isBand, levelsOnGrid } from '../bands/level-table.js';
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

/** Half-width of the levels around the booth that their stated tolerances give, dB by third octave; zero where none is stated. */
export function outsideHalfWidth(source: AirborneSource): number[] {
  if (source.kind === 'shaped') return perBand(() => source.reading.tolerance ?? 0);
  const { grid, values } = source.levels.value;
  const bands = grid === 'octave' ? octaveBands : thirdOctaveBands;
  const stated = bands.map((band) => values.find(({ hz }) => isBand(hz, band))?.tolerance ?? 0);
  // The three thirds of an octave move with it.
  return grid === 'octave' ? stated.flatMap((width) => [width, width, width]) : stated;
}
