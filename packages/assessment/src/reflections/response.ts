import { type Air, admittanceOfAbsorption, boxTransferGrid } from '@boothwright/acoustics';
import { bandIndexOf } from '../bands/grid.js';
import type { MouthToMicrophone } from '../result/reflections-result.js';
import { placeRange } from './practice.js';
import type { Room } from './room-of.js';
import { lengthOf, minus, type Vector } from './vectors.js';

/** Twelve in an octave from 50 to 300 Hz, six above to 1 kHz. */
const fine = steps(50, 300, 12);
export const responseHz: readonly number[] = [...fine, ...steps(300 * 2 ** (1 / 6), 1000, 6)];
/** Those by which places are judged. */
export const placeHz: readonly number[] = fine.filter((hz) => hz >= placeRange[0] && hz <= placeRange[1]);

/** Cross modes that fall by more between mouth and microphone are left out, an error of 0.16 dB (see `boxTransferGrid`). */
const nepers = 4;

/** m, nearer than this along every axis the sum of modes is not worked out. */
const leastApart = 0.02;

/** Why the response can't be told; null where it can. */
export function responseWhyNot(mouth: Vector, microphone: Vector): string | null {
  const apart = Math.max(...minus(mouth, microphone).map(Math.abs));
  return apart < leastApart ? `mouth and microphone are less than ${1000 * leastApart} mm apart` : null;
}

/** Response from mouth to microphone, dB re the direct sound alone. */
export function responseOf(room: Room, mouth: Vector, microphone: Vector, air: Air): MouthToMicrophone {
  const levels = levelsFor(room, mouth, microphone, [[0], [0]], responseHz, air);
  const levelDb = [...levels];
  const all = responseHz.map((hz, index) => ({ hz, levelDb: levelDb[index] as number }));
  const extreme = (better: (a: number, b: number) => boolean) =>
    all.reduce((found, each) => (better(each.levelDb, found.levelDb) ? each : found));
  return {
    hz: responseHz,
    levelDb,
    spreadDb: standardDeviation(placeHz.map((hz) => levelDb[responseHz.indexOf(hz)] as number)),
    deepest: extreme((a, b) => a < b),
    highest: extreme((a, b) => a > b),
  };
}

/** Spread of the response, dB, for mouth and microphone shifted together: [along the width][along the depth]. */
export function spreadsOf(
  room: Room,
  mouth: Vector,
  microphone: Vector,
  shifts: readonly [readonly number[], readonly number[]],
  air: Air,
): number[][] {
  const levels = levelsFor(room, mouth, microphone, shifts, placeHz, air);
  const [across, along] = shifts;
  const count = across.length * along.length;
  return across.map((_, i) =>
    along.map((__, j) =>
      standardDeviation(placeHz.map((___, index) => levels[index * count + i * along.length + j] as number)),
    ),
  );
}

function levelsFor(
  room: Room,
  mouth: Vector,
  microphone: Vector,
  [across, along]: readonly [readonly number[], readonly number[]],
  hz: readonly number[],
  air: Air,
): Float64Array {
  const pairs = (axis: 0 | 1 | 2, shifts: readonly number[]) =>
    shifts.map((shift) => [mouth[axis] + shift, microphone[axis] + shift] as const);
  const places = [pairs(0, across), pairs(1, along), pairs(2, [0])] as const;
  const levels = boxTransferGrid(room.size, places, hz, admittancesOf(room), nepers, air);
  const direct = 20 * Math.log10(lengthOf(minus(mouth, microphone)));
  return levels.map((level) => level + direct);
}

/** Admittances of the faces from the absorption of the band that a frequency lies in. */
function admittancesOf({ faces }: Room) {
  const known = new Map<number, ReturnType<typeof wallsOf>>();
  const wallsOf = (band: number) => {
    const of = (face: keyof typeof faces) => ({
      re: admittanceOfAbsorption(Math.max(0, faces[face].meanAbsorption[band] ?? 0)),
      im: 0,
    });
    return {
      left: of('left'),
      right: of('right'),
      front: of('front'),
      back: of('back'),
      floor: of('floor'),
      ceiling: of('roof'),
    };
  };
  return (hz: number) => {
    const band = Math.max(0, bandIndexOf(hz));
    const found = known.get(band) ?? wallsOf(band);
    known.set(band, found);
    return found;
  };
}

function steps(from: number, to: number, perOctave: number): number[] {
  const count = Math.floor(perOctave * Math.log2(to / from) + 1e-9) + 1;
  return Array.from({ length: count }, (_, index) => from * 2 ** (index / perOctave));
}

function standardDeviation(values: readonly number[]): number {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / values.length);
}
