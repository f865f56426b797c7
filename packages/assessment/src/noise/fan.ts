import { type Air, levelOf } from '@boothwright/acoustics';
import type { Booth, Fan, Vent } from '@boothwright/language';
import { nominalHz, perBand } from '../bands/grid.js';
import { levelsOnGrid } from '../bands/level-table.js';
import { ductPathLoss } from '../booth/openings/duct-loss.js';
import type { BandModel, ByBand } from '../result/result-document.js';
import { combinedHalfWidth } from '../uncertainty/combined.js';
import {
  ductExtrapolatedHalfWidth,
  ductHalfWidth,
  fanPowerHalfWidth,
  fieldHalfWidth,
  halfWidthAt,
} from '../uncertainty/model-uncertainty.js';
import { summedHalfWidth, summedSpectra } from './summed-spectra.js';

export interface FanNoise {
  readonly byBand: ByBand;
  readonly halfWidth: readonly number[];
}

export type VentWithFan = Vent & { readonly fan: Fan };

export function ventsWithFan(booth: Booth): VentWithFan[] {
  return booth.vents.filter((vent): vent is VentWithFan => vent.fan !== undefined);
}

/** Fans whose sound power the text does not give: their noise is unknown, not zero. */
export function silentlyUnknownFans(booth: Booth): VentWithFan[] {
  return ventsWithFan(booth).filter((vent) => vent.fan.soundPower === undefined);
}

/**
 * Sound of the fans inside the booth, dB by band; undefined when no fan states its sound power.
 *
 * Equation: L_p = L_W - losses along the duct + 10 lg(4 / A), the reverberant level in a room of absorption area A.
 * Units: L_W dB re 1 pW, A m2. Source: room acoustics, common practice.
 * Valid: above the first mode of the booth. Below it the same formula stands in with the range of the hand-over band,
 * because what a duct end gives to a closed box there depends on the fan. Vibration and sound through the fan's case
 * are left out.
 */
export function fanNoise(
  booth: Booth,
  absorptionArea: readonly number[],
  bandModels: readonly BandModel[],
  air: Air,
): FanNoise | undefined {
  let beyondTables = false;
  const fans = ventsWithFan(booth).flatMap((vent) => {
    const power = vent.fan.soundPower;
    if (power === undefined) return [];
    const { alongDuct: losses, extrapolated } = ductPathLoss(vent, air);
    beyondTables ||= extrapolated;
    const levels = levelsOnGrid(power.value);
    return [
      levels.map((level, band) =>
        level === null ? null : level - (losses[band] as number) + levelOf(4 / (absorptionArea[band] as number)),
      ),
    ];
  });
  if (fans.length === 0) return undefined;
  const halfWidth = perBand((band) => {
    const model = bandModels[band];
    const field = model === 'few-modes' || model === 'statistical' ? model : 'hand-over';
    return combinedHalfWidth(
      halfWidthAt(ductHalfWidth, nominalHz[band] as number),
      beyondTables ? ductExtrapolatedHalfWidth : 0,
      fanPowerHalfWidth,
      fieldHalfWidth[field],
    );
  });
  return {
    byBand: summedSpectra(fans),
    halfWidth: summedHalfWidth(
      fans,
      fans.map(() => halfWidth),
    ),
  };
}
