import { type Air, fanSpeedPowerChange, levelOf } from '@boothwright/acoustics';
import type { Booth } from '@boothwright/language';
import { nominalHz, perBand } from '../bands/grid.js';
import { levelsOnGrid } from '../bands/level-table.js';
import type { Isolation } from '../booth/isolation.js';
import { type DuctPathLoss, ductPathLoss } from '../booth/openings/duct-loss.js';
import type { FanPart, FanSettingName } from '../result/noise-result.js';
import type { BandModel, ByBand } from '../result/result-document.js';
import { combinedHalfWidth } from '../uncertainty/combined.js';
import {
  ductExtrapolatedHalfWidth,
  ductHalfWidth,
  fanPowerHalfWidth,
  fieldHalfWidth,
  halfWidthAt,
} from '../uncertainty/model-uncertainty.js';
import { speedShare, type VentWithFan, ventsWithFan } from './fan-settings.js';
import { summedHalfWidth, summedSpectra } from './summed-spectra.js';

/** What the sound of a fan meets on its way to the inside. */
export interface FanSurroundings {
  /** m2, inside the booth, by band */
  readonly absorptionArea: readonly number[];
  readonly bandModels: readonly BandModel[];
  readonly isolation: Isolation;
  /** m2, absorption area of the room around the booth; null when its size is not known */
  readonly roomArea: number | null;
  readonly air: Air;
}

export { ventsWithFan } from './fan-settings.js';

export interface FanNoise {
  readonly byBand: ByBand;
  readonly halfWidth: readonly number[];
  readonly parts: readonly FanPart[];
}

/** Fans whose sound power the text does not give: their noise is unknown, not zero. */
export function silentlyUnknownFans(booth: Booth): VentWithFan[] {
  return ventsWithFan(booth).filter((vent) => vent.fan.soundPower === undefined);
}

/**
 * Sound of the fans inside the booth at a setting, dB by band; undefined when they stand still or none states its power.
 *
 * Two ways in. Along the duct: L_p = L_W - losses + 10 lg(4 / A). Through the room: what the other side of the fan gives to
 * the room, L_W (less the duct, for a fan in the wall or inside) + 10 lg(4 / A_room), less the level difference of the booth.
 * L_W is the stated power changed by the fan law for the speed. A fan outside hangs at the far end and has the whole duct
 * before it; one in the wall has the reflection at the inner end alone, one inside nothing. A place that is not given is
 * taken as outside. The room counts only for a duct that opens to it and when its size is known. Whether the fan blows in
 * or out makes no difference to its sound, which runs far faster than the air.
 * Units: L_W dB re 1 pW, A m2. Source: room acoustics, common practice; `fanSpeedPowerChange`.
 * Valid: above the first mode of the booth. Below it the same formula stands in with the range of the hand-over band,
 * because what a duct end gives to a closed box there depends on the fan. Vibration and what the fan sends out through the
 * walls of its duct are left out.
 */
export function fanNoise(booth: Booth, setting: FanSettingName, surroundings: FanSurroundings): FanNoise | undefined {
  const known = ventsWithFan(booth).flatMap((vent) => fanParts(vent, setting, surroundings));
  if (known.length === 0) return undefined;
  const spectra = known.map(({ part }) => part.byBand);
  return {
    byBand: summedSpectra(spectra),
    halfWidth: summedHalfWidth(
      spectra,
      known.map(({ halfWidth }) => halfWidth),
    ),
    parts: known.map(({ part }) => part),
  };
}

interface KnownPart {
  readonly part: FanPart;
  readonly halfWidth: readonly number[];
}

function fanParts(vent: VentWithFan, setting: FanSettingName, surroundings: FanSurroundings): KnownPart[] {
  const { fan } = vent;
  const share = speedShare(fan, setting);
  if (fan.soundPower === undefined || share <= 0) return [];
  const change = fanSpeedPowerChange(share);
  const power = levelsOnGrid(fan.soundPower.value).map((level) => (level === null ? null : level + change));
  const duct = ductPathLoss(vent, surroundings.air);
  const along = alongDuct(vent, power, duct, surroundings);
  return surroundings.roomArea === null || vent.opensTo.value !== 'room'
    ? [along]
    : [along, throughRoom(vent, power, duct, surroundings, surroundings.roomArea)];
}

function alongDuct(
  vent: VentWithFan,
  power: ByBand,
  duct: DuctPathLoss,
  { absorptionArea, bandModels }: FanSurroundings,
): KnownPart {
  const place = vent.fan.place?.value ?? 'outside';
  const loss = (band: number) => {
    if (place === 'inside') return 0;
    return (place === 'in-wall' ? duct.endReflection[band] : duct.alongDuct[band]) as number;
  };
  const lined = place === 'outside';
  return {
    part: {
      vent: vent.name,
      way: 'duct',
      byBand: power.map((level, band) =>
        level === null ? null : level - loss(band) + levelOf(4 / (absorptionArea[band] as number)),
      ),
    },
    halfWidth: perBand((band) =>
      combinedHalfWidth(
        lined ? halfWidthAt(ductHalfWidth, nominalHz[band] as number) : 0,
        lined && duct.extrapolated ? ductExtrapolatedHalfWidth : 0,
        fanPowerHalfWidth,
        insideFieldHalfWidth(bandModels[band]),
      ),
    ),
  };
}

function throughRoom(
  vent: VentWithFan,
  power: ByBand,
  duct: DuctPathLoss,
  { isolation }: FanSurroundings,
  roomArea: number,
): KnownPart {
  const atFarEnd = (vent.fan.place?.value ?? 'outside') === 'outside';
  return {
    part: {
      vent: vent.name,
      way: 'room',
      byBand: power.map((level, band) => {
        if (level === null) return null;
        const given = atFarEnd ? level : level - (duct.alongDuct[band] as number);
        return given + levelOf(4 / roomArea) - (isolation.difference[band] as number);
      }),
    },
    halfWidth: perBand((band) =>
      combinedHalfWidth(isolation.halfWidth[band] as number, fanPowerHalfWidth, fieldHalfWidth.statistical),
    ),
  };
}

/** Half-width for a source inside the booth: below the first mode as in the hand-over bands. */
export function insideFieldHalfWidth(model: BandModel | undefined): number {
  return fieldHalfWidth[model === 'few-modes' || model === 'statistical' ? model : 'hand-over'];
}
