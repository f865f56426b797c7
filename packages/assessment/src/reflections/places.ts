import type { Air } from '@boothwright/acoustics';
import type { BestPlace, PlaceResult } from '../result/reflections-result.js';
import { decimals } from '../text/decimals.js';
import { joined } from '../text/joined.js';
import { arrivalsAt } from './arrivals.js';
import { leastFromWall, placesPerSide, worthMoving } from './practice.js';
import { spreadsOf } from './response.js';
import type { Room } from './room-of.js';
import type { Vector } from './vectors.js';

/** Mouth and microphone shifted together over a grid of places at the same height. */
export function placesOf(room: Room, mouth: Vector, microphone: Vector, air: Air): PlaceResult[] {
  const shifts = [0, 1].map((axis) => shiftsAlong(room.size[axis]!, mouth[axis]!, microphone[axis]!)) as [
    number[],
    number[],
  ];
  if (shifts.every((each) => each.length < 2)) return [];
  const spreads = spreadsOf(room, mouth, microphone, shifts, air);
  return shifts[0].flatMap((x, i) =>
    shifts[1].map((y, j) => {
      const moved = (point: Vector): Vector => [point[0] + x, point[1] + y, point[2]];
      return {
        microphoneM: moved(microphone),
        spreadDb: spreads[i]![j]!,
        strongestDb: arrivalsAt(room, moved(mouth), moved(microphone), air)[0]?.level ?? null,
      };
    }),
  );
}

/** Shifts that keep both away from the walls; none where the booth leaves no choice along this axis. */
function shiftsAlong(side: number, mouth: number, microphone: number): number[] {
  const least = leastFromWall - Math.min(mouth, microphone);
  const most = side - leastFromWall - Math.max(mouth, microphone);
  if (most - least < 0.05) return [0];
  return Array.from({ length: placesPerSide }, (_, index) => least + ((most - least) * index) / (placesPerSide - 1));
}

/** The place with the least ups and downs whose strongest reflection is not stronger, where it gains enough. */
export function bestOf(
  places: readonly PlaceResult[],
  microphone: Vector,
  spreadHere: number,
  strongestHere: number | null,
): BestPlace | null {
  const limit = (strongestHere ?? Number.NEGATIVE_INFINITY) + worthMoving;
  const best = places
    .filter(({ strongestDb }) => strongestDb === null || strongestDb <= limit)
    .reduce<PlaceResult | null>((found, each) => (found && found.spreadDb <= each.spreadDb ? found : each), null);
  if (best === null || spreadHere - best.spreadDb < worthMoving) return null;
  const ways = [
    away(best.microphoneM[0] - microphone[0], 'left wall', 'right wall'),
    away(best.microphoneM[1] - microphone[1], 'front wall', 'back wall'),
  ].filter((way) => way !== undefined);
  if (ways.length === 0) return null;
  return {
    ...best,
    spreadHereDb: spreadHere,
    text: `mouth and mic ${joined(ways)}: ${decimals(best.spreadDb, 1)} dB instead of ${decimals(spreadHere, 1)} dB of ups and downs from 60 to 300 Hz`,
  };
}

function away(shift: number, near: string, far: string): string | undefined {
  if (Math.abs(shift) < 0.02) return undefined;
  return `${decimals(Math.abs(shift), 2)} m further from the ${shift > 0 ? near : far}`;
}
