import type { PanelRaised } from '../result/moving-result.js';
import { metres, millimetresLeft, millimetresMissing } from './lengths.js';
import { passes } from './passes.js';

/**
 * Standing a wall panel up from lying on its face, about its bottom edge: on the way its corner reaches
 * sqrt(height^2 + thickness^2), which must stay under the ceiling. On the floor of the room, and where it stands in the
 * booth, with its bottom edge `base` above that floor. All in m.
 */
export function panelRaised(height: number, thickness: number, base: number, room: number): PanelRaised {
  const diagonal = Math.hypot(height, thickness);
  const onFloor = room - diagonal;
  const inPlace = room - base - diagonal;
  const carriedUp = room - base - height;
  const verdict = passes(Math.min(onFloor, Math.max(inPlace, carriedUp)));
  return {
    diagonalM: diagonal,
    leftOnRoomFloorM: onFloor,
    leftInPlaceM: inPlace,
    passes: verdict,
    text: words(diagonal, onFloor, inPlace, verdict),
  };
}

function words(diagonal: number, onFloor: number, inPlace: number, verdict: PanelRaised['passes']): string {
  if (verdict === 'does-not-go') {
    return `cannot be stood up from lying: ${metres(diagonal)} over its corner, ${millimetresMissing(Math.min(onFloor, inPlace))} missing under the ceiling`;
  }
  if (inPlace < 0) {
    return `stands up on the floor of the room, ${millimetresLeft(onFloor)} left, not where it belongs: stand it up first, then set it in place`;
  }
  return `stands up in place with ${millimetresLeft(inPlace)} left under the ceiling`;
}
