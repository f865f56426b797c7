import { type Air, eyringTime, sabineTime, schroederFrequency } from '@boothwright/acoustics';
import { exactHz, perBand } from '../bands/grid.js';
import type { BoothResult } from '../result/result-document.js';
import type { AbsorptionArea } from './absorption-area.js';

/**
 * Reverberation times by Sabine and Eyring, s; null below the Schroeder frequency, where neither holds.
 *
 * The Schroeder frequency needs a time, and the time holds only above it: it starts from the 500 Hz band, then takes the
 * mean of the three bands at and above the last estimate until it stays.
 */
export function reverberationOf(volume: number, area: AbsorptionArea, surface: number, air: Air) {
  const attenuation = (band: number) => area.airAttenuation[band] as number;
  const sabine = perBand((band) => sabineTime(volume, area.surfaces[band] as number, attenuation(band), air));
  const eyring = perBand((band) => eyringTime(volume, surface, area.mean[band] as number, attenuation(band), air));
  const validFromHz = schroederOf(volume, eyring);
  const valid = (times: readonly number[]) =>
    times.map((time, band) => ((exactHz[band] as number) >= validFromHz ? time : null));
  const result: BoothResult['reverberation'] = {
    absorptionAreaM2: area.total,
    sabineS: valid(sabine),
    eyringS: valid(eyring),
    validFromHz,
  };
  return result;
}

const startBand = 10;
const mostRounds = 20;

function schroederOf(volume: number, times: readonly number[]): number {
  let frequency = schroederFrequency(volume, times[startBand] as number);
  for (let round = 0; round < mostRounds; round += 1) {
    const from = Math.min(
      exactHz.findIndex((hz) => hz >= frequency) < 0 ? times.length - 3 : exactHz.findIndex((hz) => hz >= frequency),
      times.length - 3,
    );
    const used = times.slice(from, from + 3);
    const next = schroederFrequency(volume, used.reduce((sum, time) => sum + time, 0) / used.length);
    if (Math.abs(next - frequency) < 0.1) return next;
    frequency = next;
  }
  return frequency;
}
