import type { Air } from '@boothwright/acoustics';
import type { Booth } from '@boothwright/language';
import { mouthPlace } from '../booth/mouth-place.js';
import type { Memo } from '../memo/memo.js';
import type { ReflectionsResult } from '../result/reflections-result.js';
import { arrivalsAt } from './arrivals.js';
import { earlyList } from './early-list.js';
import { loudspeakersOf } from './loudspeakers.js';
import { bestOf, placesOf } from './places.js';
import { strongReflection } from './practice.js';
import { responseOf, responseWhyNot } from './response.js';
import { type Room, roomOf } from './room-of.js';
import { lengthOf, minus, type Vector } from './vectors.js';

/** Why there is no `reflections` for a booth; null where there is. */
export function reflectionsWhyNot(booth: Booth): string | null {
  const mouth = mouthPlace(booth);
  if (mouth === undefined) return 'the text places no microphone';
  const microphone = microphoneOf(booth);
  const { width, depth, height } = booth.inside;
  const outside = [mouth.at, microphone].some((point) =>
    [width, depth, height].some((side, axis) => !(point[axis]! >= 0 && point[axis]! <= side.value)),
  );
  if (outside) return 'mouth or microphone is not inside';
  return lengthOf(minus(mouth.at, microphone)) > 1e-3 ? null : 'mouth and microphone are in one place';
}

/** What the microphone takes in besides the direct sound of the mouth. */
export function reflectionsResult(booth: Booth, air: Air, memo: Memo): ReflectionsResult | null {
  const mouth = mouthPlace(booth);
  if (mouth === undefined || reflectionsWhyNot(booth) !== null) return null;
  const microphone = microphoneOf(booth);
  const room = roomOf(booth, air, memo);
  const arrivals = arrivalsAt(room, mouth.at, microphone, air);
  const responseWhy = responseWhyNot(mouth.at, microphone);
  const [response, places] =
    responseWhy === null
      ? memo.of(
          `reflections ${physicalKey(room, mouth.at, microphone, air)}`,
          () => [responseOf(room, mouth.at, microphone, air), placesOf(room, mouth.at, microphone, air)] as const,
        )
      : [null, []];
  return {
    mouthM: mouth.at,
    mouthStated: mouth.stated,
    microphoneM: microphone,
    directM: lengthOf(minus(mouth.at, microphone)),
    limitDb: strongReflection,
    early: earlyList(arrivals, room, mouth.at, microphone, air),
    response,
    responseWhy,
    places,
    best: response === null ? null : bestOf(places, microphone, response.spreadDb, arrivals[0]?.level ?? null),
    loudspeakers: loudspeakersOf(booth, air),
    leavesOut: [
      'The head and body of the performer, which shade and reflect, and that a mouth sends less sound backwards.',
      'Reflections that meet two faces, and things that stand in the way of one.',
      'A lining reflects as its absorption says, from the wall behind it, alike at every angle.',
      'Below 300 Hz the faces absorb evenly and stand still; panels that move shift single frequencies.',
    ],
  };
}

function microphoneOf({ microphone }: Booth): Vector {
  const { x, y, z } = microphone?.position ?? {};
  return [x?.value ?? Number.NaN, y?.value ?? Number.NaN, z?.value ?? Number.NaN];
}

/** All numbers that the response and the map of places depend on. */
function physicalKey({ size, pattern, faces, plates }: Room, mouth: Vector, microphone: Vector, air: Air): string {
  return JSON.stringify([
    size,
    pattern,
    Object.values(faces).map(({ absorption, meanAbsorption, parts }) => [
      absorption,
      meanAbsorption.slice(0, 14),
      parts.map(({ along, across, absorption: own }) => [along, across, own]),
    ]),
    plates.map(({ middle, normal, edges, absorption }) => [middle, normal, edges, absorption]),
    mouth,
    microphone,
    air,
  ]);
}
