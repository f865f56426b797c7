import { type Air, eyringTime, sabineTime, schroederFrequency } from '@boothwright/acoustics';
import { exactHz, perBand } from '../bands/grid.js';
import type { BoothResult } from '../result/result-document.js';
import type { AbsorptionArea } from './absorption-area.js';

/**
 * Mean absorption up to which a decay is said to have one time. Evidence: our own bound. At 0.5 each reflection takes 3 dB
 * and 60 dB are about twenty reflections, enough to mix; beyond it a few reflections between the barest faces decide, and
 * neither Sabine nor Eyring says anything.
 */
export const mostMeanAbsorption = 0.5;

/**
 * Reverberation times by Sabine and Eyring, s; null where neither holds: below the Schroeder frequency, where the mean
 * absorption passes `mostMeanAbsorption`, and in every band of a booth with an open face.
 *
 * The Schroeder frequency needs a time, and the time holds only above it: it starts from the 500 Hz band, then takes the
 * mean of the three bands at and above the last estimate until it stays.
 */
export function reverberationOf(volume: number, area: AbsorptionArea, surface: number, air: Air, openFace: boolean) {
  const attenuation = (band: number) => area.airAttenuation[band] as number;
  const sabine = perBand((band) => sabineTime(volume, area.surfaces[band] as number, attenuation(band), air));
  const eyring = perBand((band) => eyringTime(volume, surface, area.mean[band] as number, attenuation(band), air));
  const validFromHz = schroederOf(volume, eyring);
  const valid = (times: readonly number[]) =>
    times.map((time, band) =>
      !openFace && (exactHz[band] as number) >= validFromHz && (area.mean[band] as number) <= mostMeanAbsorption
        ? time
        : null,
    );
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
