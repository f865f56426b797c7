import { frequencyWeighting } from '@boothwright/acoustics';
import { exactHz, nominalHz } from '../bands/grid.js';
import { pathWords } from '../booth/path-words.js';
import type { BoothResult, ByBand } from '../result/result-document.js';
import { hertz } from '../text/hertz.js';

/** Band that brings most to a weighted total; null when no band is known. */
export function governingBand(levels: ByBand, weighting: 'A' | 'C' | 'Z'): number | null {
  let best: number | null = null;
  let highest = Number.NEGATIVE_INFINITY;
  levels.forEach((level, band) => {
    if (level === null) return;
    const weighted = level + frequencyWeighting(weighting, exactHz[band] as number);
    if (weighted > highest) {
      highest = weighted;
      best = band;
    }
  });
  return best;
}

export interface Limiting {
  /** Id of the path, or `fan`. */
  readonly id: string;
  readonly words: string;
  readonly source: string;
  readonly band: number;
}

/** The way in, and the source, that bring most energy in one band. */
export function limitingPath(result: BoothResult, band: number): Limiting | null {
  let best: Limiting | null = null;
  let highest = 0;
  const offer = (energy: number, candidate: Limiting) => {
    if (energy > highest) {
      highest = energy;
      best = candidate;
    }
  };
  for (const source of result.noise.bySource) {
    const level = source.inside.byBand[band];
    if (level === null || level === undefined) continue;
    source.shares.forEach((share, index) => {
      const part = share[band];
      const path = result.paths[index];
      if (part === null || part === undefined || path === undefined) return;
      offer(part * 10 ** (level / 10), { id: path.id, words: pathWords(path), source: source.name, band });
    });
  }
  const fan = result.noise.fan?.byBand[band];
  if (fan !== null && fan !== undefined) {
    offer(10 ** (fan / 10), { id: 'fan', words: 'the air duct', source: 'the fan', band });
  }
  return best;
}

/** ` Most of it is at 125 Hz, from tram through the left wall.` or nothing. */
export function limitingSentence(limiting: Limiting | null): string {
  if (limiting === null) return '';
  return ` Most of it is at ${hertz(nominalHz[limiting.band] as number)}, from ${limiting.source} through ${limiting.words}.`;
}
