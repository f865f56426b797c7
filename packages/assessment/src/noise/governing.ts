import { frequencyWeighting } from '@boothwright/acoustics';
import type { Booth } from '@boothwright/language';
import { exactHz, nominalHz } from '../bands/grid.js';
import { strongestPath } from '../booth/strongest-path.js';
import type { BoothResult, ByBand } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { hertz } from '../text/hertz.js';
import { ownSounds } from './own-sounds.js';

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

interface LimitedBooth {
  readonly booth: Booth;
  readonly result: BoothResult;
}

export interface Limiting {
  /** Id of the path, or of the booth's own sound; `faces:` and the name of the build-up for several faces of one. */
  readonly id: string;
  readonly words: string;
  readonly source: string;
  /** Source and way in a sentence. */
  readonly phrase: string;
  readonly band: number;
  /** Share of the energy inside in this band, 0..1. */
  readonly share: number;
}

/** The way in, and the source, that bring most energy in one band; `only` keeps to one source. */
export function limitingPath({ booth, result }: LimitedBooth, band: number, only?: string): Limiting | null {
  let total = 0;
  let best: Omit<Limiting, 'share'> | null = null;
  let strongest = 0;
  const offer = (energy: number, found: Omit<Limiting, 'share' | 'band'>) => {
    if (energy <= strongest) return;
    strongest = energy;
    best = { ...found, band };
  };
  for (const source of result.noise.bySource) {
    const level = source.inside.byBand[band];
    if (level === null || level === undefined || (only !== undefined && source.name !== only)) continue;
    const energy = 10 ** (level / 10);
    total += energy;
    const path = strongestPath(
      booth,
      result.paths,
      source.shares.map((share) => share[band] ?? 0),
    );
    if (path === null) continue;
    const { id, words } = path;
    offer(path.weight * energy, { id, words, source: source.name, phrase: `${source.name} through ${words}` });
  }
  for (const { levels, id, words, source, phrase } of only === undefined ? ownSounds(result.noise) : []) {
    const level = levels[band];
    if (level === null || level === undefined) continue;
    total += 10 ** (level / 10);
    offer(10 ** (level / 10), { id, words, source, phrase });
  }
  return best === null ? null : { ...(best as Omit<Limiting, 'share'>), share: strongest / total };
}

/** ` The third octave that counts most is 125 Hz, where tram through the left wall brings 62 %.` or nothing. */
export function limitingSentence(limiting: Limiting | null): string {
  if (limiting === null) return '';
  const at = hertz(nominalHz[limiting.band] as number);
  return ` The third octave that counts most is ${at}, where ${limiting.phrase} brings ${decimals(100 * limiting.share, 0)} %.`;
}
