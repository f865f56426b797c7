import { frequencyWeighting } from '@boothwright/acoustics';
import type { Booth } from '@boothwright/language';
import { exactHz, nominalHz } from '../bands/grid.js';
import { strongestPath } from '../booth/strongest-path.js';
import type { ByBand, PathResult } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { hertz } from '../text/hertz.js';
import type { OwnSound } from './own-sounds.js';

/** One sound behind the booth's paths: its levels on the other side, and what each path brings of them. */
export interface SoundThrough {
  readonly source: string;
  readonly levels: ByBand;
  /** Share of the energy, [path][band] */
  readonly shares: readonly ByBand[];
}

export interface LimitingOverall {
  /** Id of the path, or of the booth's own sound; `faces:` and the name of the build-up for several faces of one. */
  readonly id: string;
  readonly words: string;
  /** A sound of the booth itself in words; undefined for what comes through a path. */
  readonly own?: string;
  /** The sound that brings most by this way. */
  readonly source: string;
  /** Share of the A-weighted energy of all bands, 0..1. */
  readonly share: number;
  /** Band of the grid in which this way brings most. */
  readonly band: number;
}

/**
 * The way that brings most to an A-weighted total, over all bands and sounds: the loudest band alone can belong to another
 * one. Faces of one build-up count together. Levels in dB; null when nothing is known.
 */
export function limitingOverall(
  booth: Booth,
  paths: readonly PathResult[],
  sounds: readonly SoundThrough[],
  own: readonly OwnSound[] = [],
): LimitingOverall | null {
  const through = (sound: SoundThrough, path: number) =>
    sound.levels.map((level, band) => weightedEnergy(level, band) * (sound.shares[path]?.[band] ?? 0));
  const energies = paths.map((_, path) => sounds.map((sound) => through(sound, path)));
  const weights = energies.map((bySound) => sum(bySound.map(sum)));
  const ownEnergies = own.map(({ levels }) => levels.map(weightedEnergy));
  const ownTotals = ownEnergies.map(sum);
  const total = sum(weights) + sum(ownTotals);
  if (!(total > 0)) return null;
  const strongest = strongestPath(booth, paths, weights);
  const loudest = largest(ownTotals);
  const loudestOwn = own[loudest];
  if (loudestOwn !== undefined && (strongest === null || (ownTotals[loudest] as number) > strongest.weight)) {
    const { id, words, source, phrase } = loudestOwn;
    const band = largest(ownEnergies[loudest] as number[]);
    return { id, words, source, own: phrase, share: (ownTotals[loudest] as number) / total, band };
  }
  if (strongest === null) return null;
  const bySound = sounds.map((_, sound) =>
    exactHz.map((_hz, band) => sum(strongest.members.map((path) => energies[path]?.[sound]?.[band] ?? 0))),
  );
  return {
    id: strongest.id,
    words: strongest.words,
    source: sounds[largest(bySound.map(sum))]?.source ?? '',
    share: strongest.weight / total,
    band: largest(exactHz.map((_hz, band) => sum(bySound.map((bands) => bands[band] as number)))),
  };
}

/** ` Of the A-weighted sound inside 62 % comes through the left wall, mainly tram, mainly in the third octave of 125 Hz.` */
export function limitingOverallSentence(limiting: LimitingOverall | null, where: 'inside' | 'outside'): string {
  if (limiting === null) return '';
  const { own, source, words, share, band } = limiting;
  const inwards = own !== undefined ? `is ${own}` : `comes through ${words}, mainly ${source}`;
  const way = where === 'outside' ? `leaves through ${words}` : inwards;
  return ` Of the A-weighted sound ${where} ${decimals(100 * share, 0)} % ${way}, mainly in the third octave of ${hertz(nominalHz[band] as number)}.`;
}

function weightedEnergy(level: number | null, band: number): number {
  return level === null ? 0 : 10 ** ((level + frequencyWeighting('A', exactHz[band] as number)) / 10);
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

function largest(values: readonly number[]): number {
  return values.reduce((best, value, index) => (value > (values[best] as number) ? index : best), 0);
}
