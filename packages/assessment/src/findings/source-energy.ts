import type { JudgedContext } from '../assessment-context.js';
import { nominalHz } from '../bands/grid.js';
import { type AirborneSource, outsideSpectrum } from '../noise/outside-spectrum.js';

/** A band of a source counts as carrying its energy when it lies within this of the source's strongest band, dB. */
export const energyWithinDb = 10;

/** Voice: from the lowest fundamental of speech to the top of its consonants, Hz. Evidence: common practice. */
export const voiceRange = { fromHz: 85, toHz: 4000 } as const;

/** Names of the airborne sources that carry real energy in a band, unweighted. */
export function sourcesWithEnergyAt({ spec }: JudgedContext, band: number): string[] {
  return (spec.site?.sources ?? [])
    .filter((source): source is AirborneSource => source.kind !== 'impact')
    .filter((source) => {
      const levels = outsideSpectrum(source);
      const level = levels[band];
      const highest = Math.max(...levels.map((value) => value ?? Number.NEGATIVE_INFINITY));
      return level !== null && level !== undefined && level >= highest - energyWithinDb;
    })
    .map((source) => source.name);
}

/** Whether a frequency lies where a voice has energy. */
export function inVoiceRange(hz: number): boolean {
  return hz >= voiceRange.fromHz && hz <= voiceRange.toHz;
}

export function nominalOf(band: number): number {
  return nominalHz[band] as number;
}
