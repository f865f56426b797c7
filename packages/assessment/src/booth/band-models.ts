import { thirdOctaveBands } from '@boothwright/acoustics';
import type { BandModel } from '../result/result-document.js';

/**
 * Which model speaks in which band. Up to half the first mode of the box the air inside is one spring (`closedBoxLimit`).
 * From there to the band that holds the first mode both models are stretched, and the less favourable counts. Up to the
 * Schroeder frequency a few modes rule and the statistical formula is used with a wider range; above it the formula holds.
 */
export function bandModelsOf(closedBoxLimit: number, firstMode: number, schroeder: number): BandModel[] {
  return thirdOctaveBands.map((band) => {
    if (band.upper <= closedBoxLimit) return 'small-enclosure';
    if (band.lower <= firstMode) return 'hand-over';
    return band.exact < schroeder ? 'few-modes' : 'statistical';
  });
}
