import type { Air } from '@boothwright/acoustics';
import { decimals } from '../text/decimals.js';
import { type Arrival, plateArrival } from './arrivals.js';
import { platesOf } from './plates-of.js';
import { strongReflection, tiltsTried } from './practice.js';
import type { Room } from './room-of.js';
import type { Vector } from './vectors.js';

/** What to do about a reflection, in words: tilt, absorb or move. `covered` is its level behind a cover. */
export function todoFor(
  arrival: Arrival,
  covered: number | null,
  room: Room,
  mouth: Vector,
  microphone: Vector,
  air: Air,
): string {
  const { from, at, level } = arrival;
  if (level <= strongReflection) return 'nothing';
  const after = covered === null ? '' : `, to ${decimals(covered, 0)} dB`;
  const still = covered !== null && covered > strongReflection ? '; and go farther from it, or nearer to the mic' : '';
  if (from.kind === 'equipment') {
    const { thing } = from.plate;
    const tilted = canTilt.has(thing.kind.value) ? tiltThatHelps(arrival, room, mouth, microphone, air) : undefined;
    if (tilted !== undefined) return tilted;
    return covered === null
      ? 'move it out of the line of the mirror'
      : `move it aside, or cover it with felt or foam${after}`;
  }
  if (covered === null) return 'it absorbs already: go farther from it, or nearer to the mic';
  if (from.part !== undefined) return `hang an absorbing cover over it${after}${still}`;
  if (from.face === 'floor') return `lay something thick and soft there, fibre under a rug${after}${still}`;
  const [x, y, z] = at.map((value) => `${decimals(value, 2)} m`);
  const where =
    from.face === 'roof'
      ? `${x} from the left, ${y} from the front`
      : from.face === 'left' || from.face === 'right'
        ? `${y} from the front, ${z} up`
        : `${x} from the left, ${z} up`;
  return `put 50 mm or more of fibre round the point ${where}${after}${still}`;
}

const canTilt: ReadonlySet<string> = new Set(['copy-stand', 'screen', 'other']);

/** The smallest further tilt by which no side of the thing sends a strong reflection to the microphone any more. */
function tiltThatHelps(arrival: Arrival, room: Room, mouth: Vector, microphone: Vector, air: Air): string | undefined {
  if (arrival.from.kind !== 'equipment') return undefined;
  const { thing } = arrival.from.plate;
  for (const step of tiltsTried) {
    for (const tilt of [thing.tilt.value + step, thing.tilt.value - step]) {
      if (Math.abs(tilt) > 60) continue;
      const levels = platesOf(thing, tilt).flatMap((plate) =>
        plateArrival(plate, room, mouth, microphone, air).map(({ level }) => level),
      );
      const strongest = Math.max(...levels, Number.NEGATIVE_INFINITY);
      if (strongest > strongReflection) continue;
      const way = tilt > thing.tilt.value ? 'back' : 'forward';
      const to = Number.isFinite(strongest) ? `, to ${decimals(strongest, 0)} dB` : '';
      return `lean its top ${step} deg further ${way}${to}; or cover it with felt or foam`;
    }
  }
  return undefined;
}
