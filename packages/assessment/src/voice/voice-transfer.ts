import { levelOf } from '@boothwright/acoustics';
import { perBand } from '../bands/grid.js';
import type { BoothPath } from '../booth/booth-path.js';
import type { BandModel } from '../result/result-document.js';
import { combinedHalfWidth } from '../uncertainty/combined.js';
import { fieldHalfWidth } from '../uncertainty/model-uncertainty.js';

/**
 * Sound power of a talker less the level at 1 m, dB: 10 lg(4 pi), a point source in free air. Published figures for a
 * real talker are near 10.8 dB (a table after ANSI), so the rounding is kept.
 */
export const powerAboveLevelAtOneMetre = 11;

/** From the level 1 m in front of the lips to the level at a place outside. */
export interface VoiceTransfer {
  /** dB by band that the place is quieter; null where not known. */
  readonly loss: readonly (number | null)[];
  /** dB by band, without that of the talker. */
  readonly halfWidth: readonly number[];
}

/**
 * The way of the voice into the room around the booth.
 *
 * Equation: all power of the talker falls on the inside again and again until it is absorbed or passes, so the power that
 * passes is W_t = W * sum(S_i tau_i) / A_inside; outside L = L_Wt + 10 lg(4 / A_room).
 * Units: m2, dB. Source: Sabine's energy balance of two rooms (common practice).
 * Valid: above the Schroeder frequency of the booth; below it the range is wider. The floor face is counted as if it
 * radiated into the room.
 */
export function voiceTransfer(
  paths: readonly BoothPath[],
  absorptionArea: readonly number[],
  shares: readonly (readonly (number | null)[])[],
  bandModels: readonly BandModel[],
  roomArea: number,
): VoiceTransfer {
  return {
    loss: perBand((band) => {
      const passed = paths.reduce(
        (sum, { result }) => sum + result.areaM2 * 10 ** (-(result.transmissionLossDb[band] as number) / 10),
        0,
      );
      return -powerAboveLevelAtOneMetre - levelOf(passed / (absorptionArea[band] as number)) - levelOf(4 / roomArea);
    }),
    halfWidth: perBand((band) => {
      const path = paths.reduce(
        (sum, { halfWidth }, index) => sum + (shares[index]?.[band] ?? 0) * (halfWidth[band] as number),
        0,
      );
      const model = bandModels[band];
      const field = model === undefined || model === 'not-assessed' ? 'few-modes' : model;
      return combinedHalfWidth(path, fieldHalfWidth[field]);
    }),
  };
}
