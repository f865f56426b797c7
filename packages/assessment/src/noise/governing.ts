import { frequencyWeighting } from '@boothwright/acoustics';
import type { Booth, Face } from '@boothwright/language';
import { exactHz, nominalHz } from '../bands/grid.js';
import { pathWords } from '../booth/path-words.js';
import type { BoothResult, ByBand } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
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

interface LimitedBooth {
  readonly booth: Booth;
  readonly result: BoothResult;
}

export interface Limiting {
  /** Id of the path, or `fan`; of several faces of one build-up the strongest. */
  readonly id: string;
  readonly words: string;
  readonly source: string;
  readonly band: number;
  /** Share of the energy inside in this band, 0..1. */
  readonly share: number;
}

/**
 * The way in, and the source, that bring most energy in one band. Faces of the same build-up count together: four walls
 * of one kind are one thing to improve. `only` keeps to one source.
 */
export function limitingPath({ booth, result }: LimitedBooth, band: number, only?: string): Limiting | null {
  const groups = new Map<
    string,
    { energy: number; strongest: number; id: string; words: string; source: string; faces: number }
  >();
  let total = 0;
  const add = (key: string, energy: number, id: string, words: string, source: string) => {
    total += energy;
    const group = groups.get(key) ?? { energy: 0, strongest: 0, id, words, source, faces: 0 };
    group.energy += energy;
    group.faces += 1;
    if (energy > group.strongest) Object.assign(group, { strongest: energy, id });
    if (group.faces > 1) group.words = `the ${group.faces} faces of ${key.slice(key.indexOf(' ') + 1)}`;
    groups.set(key, group);
  };
  for (const source of result.noise.bySource) {
    const level = source.inside.byBand[band];
    if (level === null || level === undefined || (only !== undefined && source.name !== only)) continue;
    source.shares.forEach((share, index) => {
      const part = share[band];
      const path = result.paths[index];
      if (part === null || part === undefined || path === undefined) return;
      const energy = part * 10 ** (level / 10);
      const build = path.kind === 'face' ? booth.faces[path.name as Face]?.assembly.name : undefined;
      add(
        build === undefined ? `${source.name} ${path.id}` : `${source.name} ${build}`,
        energy,
        path.id,
        pathWords(path),
        source.name,
      );
    });
  }
  const fan = result.noise.fan?.byBand[band];
  if (fan !== null && fan !== undefined && only === undefined) {
    add('the fan', 10 ** (fan / 10), 'fan', 'its duct', 'the fan');
  }
  const best = [...groups.values()].reduce<(typeof groups extends Map<string, infer G> ? G : never) | null>(
    (strongest, group) => (strongest === null || group.energy > strongest.energy ? group : strongest),
    null,
  );
  return best === null
    ? null
    : { id: best.id, words: best.words, source: best.source, band, share: best.energy / total };
}

/** ` The loudest band is 125 Hz, where tram through the left wall brings 62 %.` or nothing. */
export function limitingSentence(limiting: Limiting | null): string {
  if (limiting === null) return '';
  const at = hertz(nominalHz[limiting.band] as number);
  return ` The band that counts most is ${at}, where ${limiting.source} through ${limiting.words} brings ${decimals(100 * limiting.share, 0)} %.`;
}
