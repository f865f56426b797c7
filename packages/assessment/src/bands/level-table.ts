import { octaveBands, octaveLevelsToThirds, thirdOctaveBands } from '@boothwright/acoustics';
import type { BandTable } from '@boothwright/language';
import type { ByBand } from '../result/result-document.js';

/**
 * Band levels of the text on the third-octave grid, dB. An octave level is spread with equal energy over its three
 * thirds (each 4.8 dB lower); a band that the text leaves out stays null.
 */
export function levelsOnGrid(table: BandTable): ByBand {
  const bands = table.grid === 'octave' ? octaveBands : thirdOctaveBands;
  const given = bands.map((band) => table.values.find((entry) => isBand(entry.hz, band))?.value ?? null);
  return table.grid === 'octave' ? octaveLevelsToThirds(given) : given;
}

/** The writer may name a band by its nominal or its exact centre. */
export function isBand(hz: number, band: { readonly lower: number; readonly upper: number }): boolean {
  return hz >= band.lower && hz < band.upper;
}
