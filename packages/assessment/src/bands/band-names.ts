import { octaveBands, thirdsOfOctave } from '@boothwright/acoustics';
import type { ByBand } from '../result/result-document.js';
import { hertz } from '../text/hertz.js';
import { nominalHz } from './grid.js';

/** Which bands are known, for a sentence: `50 Hz to 5 kHz`, `160 Hz to 5 kHz`, `no band`. */
export function knownBands(levels: ByBand): string {
  const first = levels.findIndex((level) => level !== null);
  if (first < 0) return 'no band';
  const last = levels.findLastIndex((level) => level !== null);
  const span = bandSpan(nominalHz[first] as number, nominalHz[last] as number);
  const gaps = levels.slice(first, last).some((level) => level === null);
  return gaps ? `${span} with bands left out` : span;
}

/** `50 Hz to 5 kHz`, or `250 Hz` where there is one band only. */
export function bandSpan(first: number, last: number): string {
  return first === last ? hertz(first) : `${hertz(first)} to ${hertz(last)}`;
}

/** Bands that are not known, by octave where a whole octave is missing; empty when every band is known. */
export function unknownOctaves(levels: ByBand): number[] {
  return octaveBands
    .filter((_, octave) => thirdsOfOctave(octave).some((third) => levels[third] === null))
    .map((band) => band.nominal);
}
