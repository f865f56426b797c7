import { type Air, levelOutsideFacade, receivedLevel, sabineConstant } from '@boothwright/acoustics';
import type { Neighbour } from '@boothwright/language';
import { transmissionLossOf } from '../assembly/transmission-loss.js';
import { nominalHz, perBand } from '../bands/grid.js';
import { valuesOnGrid } from '../bands/quantity-table.js';
import type { Memo } from '../memo/memo.js';
import { combinedHalfWidth } from '../uncertainty/combined.js';
import { fieldHalfWidth, halfWidthAt, statedLossHalfWidth } from '../uncertainty/model-uncertainty.js';
import type { VoiceTransfer } from './voice-transfer.js';

/** What the text must say of a neighbour before the voice there can be predicted, in words. */
export function missingOfNeighbour({ side, separation, area, volume, distance }: Neighbour): string[] {
  return [
    ...(separation === undefined ? ['what separates it (`through` a build-up, or `loss`)'] : []),
    ...(area === undefined ? ['the `area` of that element'] : []),
    ...(side.value !== 'outdoors' && volume === undefined ? ['the `volume` of the room behind it'] : []),
    ...(side.value === 'outdoors' && distance === undefined ? ['the `distance` from the outer wall'] : []),
  ];
}

/**
 * The way of the voice on from the room around the booth to a neighbour; null where the text says too little.
 *
 * Equation: to a room L = L_room - R + 10 lg(S / A), A = k V / T; outdoors `levelOutsideFacade`.
 * Units: m2, m3, s, m, dB. Source: definition of the sound reduction index (common practice); EN 12354-4 (from memory).
 * Valid: through the separating element alone: side walls, pipes and every contact of the booth with the structure are left
 * out, so the level is a lower one. A build-up is taken as a square of the area.
 */
export function neighbourTransfer(
  toRoom: VoiceTransfer,
  neighbour: Neighbour,
  air: Air,
  memo: Memo,
): VoiceTransfer | null {
  const { separation, area, volume, distance } = neighbour;
  if (separation === undefined || area === undefined || missingOfNeighbour(neighbour).length > 0) return null;
  const { loss, halfWidth } = separationLoss(separation, area.value, air, memo);
  const outdoors = neighbour.side.value === 'outdoors';
  const absorption = outdoors ? 0 : (sabineConstant(air) * (volume?.value ?? 0)) / neighbour.reverberation.value;
  return {
    loss: perBand((band) => {
      const own = loss[band] ?? null;
      const before = toRoom.loss[band] ?? null;
      if (own === null || before === null) return null;
      return outdoors
        ? -levelOutsideFacade(-before, own, area.value, distance?.value ?? 0, air)
        : -receivedLevel(-before, own, area.value, absorption);
    }),
    halfWidth: perBand((band) =>
      combinedHalfWidth(
        toRoom.halfWidth[band] as number,
        halfWidth[band] as number,
        fieldHalfWidth.statistical,
        fieldHalfWidth.statistical,
      ),
    ),
  };
}

function separationLoss(separation: NonNullable<Neighbour['separation']>, area: number, air: Air, memo: Memo) {
  if (separation.kind === 'assembly') {
    const side = Math.sqrt(area);
    const { total, halfWidth } = transmissionLossOf(
      separation.assembly.layers,
      { width: side, height: side },
      air,
      memo,
    );
    return { loss: total as readonly (number | null)[], halfWidth };
  }
  return {
    loss: valuesOnGrid(separation.loss.value),
    halfWidth: nominalHz.map((nominal) => halfWidthAt(statedLossHalfWidth, nominal)),
  };
}
