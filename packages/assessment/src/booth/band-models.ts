import { thirdOctaveBands } from '@boothwright/acoustics';
import type { BandModel } from '../result/result-document.js';

/**
 * Which model speaks in which band: below the first mode of the box the air inside is one spring; in the band that
 * holds the first mode the less favourable of the two models counts; up to the Schroeder frequency a few modes rule
 * and the statistical formula is used with a wider range; above it the formula holds.
 */
export function bandModelsOf(firstMode: number, schroeder: number): BandModel[] {
  return thirdOctaveBands.map((band) => {
    if (band.upper <= firstMode) return 'small-enclosure';
    if (band.lower <= firstMode) return 'hand-over';
    return band.exact < schroeder ? 'few-modes' : 'statistical';
  });
}
