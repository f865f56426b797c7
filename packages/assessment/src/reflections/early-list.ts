import { type Air, combRipple } from '@boothwright/acoustics';
import type { EarlyReflectionResult } from '../result/reflections-result.js';
import { textRange } from '../text/text-range.js';
import type { Arrival } from './arrivals.js';
import { coverAbsorption, strongReflection } from './practice.js';
import type { Room } from './room-of.js';
import { todoFor } from './todo-for.js';
import type { Vector } from './vectors.js';

/** Every arrival with the comb it makes and what to do about it. */
export function earlyList(
  arrivals: readonly Arrival[],
  room: Room,
  mouth: Vector,
  microphone: Vector,
  air: Air,
): EarlyReflectionResult[] {
  return arrivals.map((arrival) => {
    const { from, at, absorption, pathDifference, delay, level } = arrival;
    const { firstDipHz, ...ripple } = rippleOf(level, pathDifference, air);
    const covered = level + 10 * Math.log10((1 - coverAbsorption) / (1 - absorption));
    const strong = level > strongReflection;
    const cover = absorption < coverAbsorption ? coveredBy(covered, pathDifference, air) : null;
    return {
      name: nameOf(arrival),
      kind: from.kind === 'equipment' ? ('equipment' as const) : (from.part?.kind ?? ('face' as const)),
      range: rangeOf(arrival, room),
      atM: at,
      delayMs: 1000 * delay,
      pathDifferenceM: pathDifference,
      absorption,
      levelDb: level,
      firstNullHz: firstDipHz,
      ...ripple,
      strong,
      covered: cover,
      todo: todoFor(arrival, cover?.levelDb ?? null, room, mouth, microphone, air),
    };
  });
}

function coveredBy(level: number, pathDifference: number, air: Air) {
  const { peakDb, dipDb } = rippleOf(level, pathDifference, air);
  return { levelDb: level, peakDb, dipDb };
}

/** An edge can focus a reflection a little: as strong as the direct sound is the most that the comb knows. */
function rippleOf(level: number, pathDifference: number, air: Air) {
  const { peak, dip, firstDipHz } = combRipple(Math.min(level, 0), pathDifference, air);
  return { peakDb: peak, dipDb: Number.isFinite(dip) ? dip : null, firstDipHz };
}

/** What it comes from, as a performer would say it. */
export function nameOf({ from }: Arrival): string {
  if (from.kind === 'equipment') return from.plate.thing.title ?? from.plate.thing.name;
  if (from.part !== undefined) return `${from.part.kind} ${from.part.name}`;
  return from.face === 'roof' || from.face === 'floor' ? from.face : `${from.face} wall`;
}

function rangeOf({ from }: Arrival, room: Room) {
  if (from.kind === 'equipment') return textRange(from.plate.thing.nameRange);
  return (from.part ?? room.faces[from.face]).range;
}
