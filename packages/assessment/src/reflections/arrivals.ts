import { type Air, type BoxPoint, earlyReflections, finiteReflector } from '@boothwright/acoustics';
import type { Face } from '@boothwright/language';
import { faceNames } from '../booth/geometry.js';
import { patternTowards } from './pattern-towards.js';
import type { Plate } from './plates-of.js';
import { earlyTime, speechOctaves, weakReflection } from './practice.js';
import type { FacePart, Room } from './room-of.js';
import { dot, lengthOf, minus, plus, type Vector } from './vectors.js';

/** One reflection at the microphone. */
export interface Arrival {
  readonly from:
    | { readonly kind: 'face'; readonly face: Face; readonly part: FacePart | undefined }
    | { readonly kind: 'equipment'; readonly plate: Plate };
  /** Where it is reflected. */
  readonly at: Vector;
  /** Of what it meets, 500 Hz to 2 kHz. */
  readonly absorption: number;
  /** m */
  readonly pathDifference: number;
  /** s */
  readonly delay: number;
  /** dB re the direct sound, as the microphone takes both in. */
  readonly level: number;
}

/** Reflections of first order that arrive within 10 ms of the direct sound, strongest first. */
export function arrivalsAt(room: Room, mouth: Vector, microphone: Vector, air: Air): Arrival[] {
  return [
    ...faceArrivals(room, mouth, microphone, air),
    ...room.plates.flatMap((plate) => plateArrival(plate, room, mouth, microphone, air)),
  ]
    .filter(({ delay, level }) => delay <= earlyTime && level >= weakReflection)
    .sort((a, b) => b.level - a.level);
}

function faceArrivals(room: Room, mouth: Vector, microphone: Vector, air: Air): Arrival[] {
  const hits = faceNames.map((face) => {
    const at = mirrorPoint(room, face, mouth, microphone);
    const [along, across] = onFace(face, at);
    const part = room.faces[face].parts.find(
      (each) =>
        along >= each.along[0] && along <= each.along[1] && across >= each.across[0] && across <= each.across[1],
    );
    return { face, at, part, absorption: (part ?? room.faces[face]).absorption };
  });
  const of = (face: Face) => hits.find((hit) => hit.face === face)?.absorption ?? 1;
  const absorption = {
    left: of('left'),
    right: of('right'),
    front: of('front'),
    back: of('back'),
    floor: of('floor'),
    ceiling: of('roof'),
  };
  const path = { size: room.size, source: mouth as BoxPoint, receiver: microphone as BoxPoint };
  return earlyReflections(path, absorption, 1, air).flatMap(({ walls, delay, pathDifference, level }) => {
    const wall = walls[0]?.wall;
    const hit = hits.find(({ face }) => face === (wall === 'ceiling' ? 'roof' : wall));
    if (hit === undefined || pathDifference <= 0) return [];
    return [
      {
        from: { kind: 'face' as const, face: hit.face, part: hit.part },
        at: hit.at,
        absorption: hit.absorption,
        pathDifference,
        delay,
        level: level + patternTowards(room.pattern, microphone, mouth, hit.at),
      },
    ];
  });
}

/** Where the straight line from the image of the mouth to the microphone goes through the face. */
function mirrorPoint({ size }: Room, face: Face, mouth: Vector, microphone: Vector): Vector {
  const axis = face === 'left' || face === 'right' ? 0 : face === 'front' || face === 'back' ? 1 : 2;
  const wall = face === 'right' || face === 'back' || face === 'roof' ? size[axis] : 0;
  const one = Math.abs(mouth[axis] - wall);
  const two = Math.abs(microphone[axis] - wall);
  const share = one + two === 0 ? 0 : one / (one + two);
  const at = plus(mouth, minus(microphone, mouth), share);
  return at.map((value, index) => (index === axis ? wall : value)) as unknown as Vector;
}

/** The two coordinates of a point on a face. */
function onFace(face: Face, [x, y, z]: Vector): readonly [number, number] {
  if (face === 'front' || face === 'back') return [x, z];
  return face === 'left' || face === 'right' ? [y, z] : [x, y];
}

/** Mirrored in the plane of the plate, and less by what its finite size leaves; none from behind it. */
export function plateArrival(
  plate: Plate,
  room: Pick<Room, 'pattern'>,
  mouth: Vector,
  microphone: Vector,
  air: Air,
): Arrival[] {
  const one = dot(minus(mouth, plate.middle), plate.normal);
  const two = dot(minus(microphone, plate.middle), plate.normal);
  if (one <= 0.001 || two <= 0.001 || plate.absorption >= 1) return [];
  const image = plus(mouth, plate.normal, -2 * one);
  const way = minus(microphone, image);
  const at = plus(image, way, one / (one + two));
  const reflected = lengthOf(way);
  const direct = lengthOf(minus(microphone, mouth));
  const ends = plate.edges.map(({ direction, half }) => {
    const off = dot(minus(at, plate.middle), direction);
    const slant = dot(way, direction) / reflected;
    return { from: -half - off, to: half - off, cosine: Math.sqrt(Math.max(0, 1 - slant * slant)) };
  }) as [EdgeDistances, EdgeDistances];
  const distances = [lengthOf(minus(at, mouth)), lengthOf(minus(at, microphone))] as const;
  // Energies of the three octaves of speech, averaged.
  const energy =
    speechOctaves.reduce((sum, hz) => sum + 10 ** (finiteReflector(ends, distances, air.soundSpeed / hz) / 10), 0) /
    speechOctaves.length;
  const level =
    20 * Math.log10(direct / reflected) +
    10 * Math.log10((1 - plate.absorption) * energy) +
    patternTowards(room.pattern, microphone, mouth, at);
  const pathDifference = reflected - direct;
  if (!(pathDifference > 1e-4)) return [];
  return [
    {
      from: { kind: 'equipment', plate },
      at,
      absorption: plate.absorption,
      pathDifference,
      delay: pathDifference / air.soundSpeed,
      level,
    },
  ];
}

type EdgeDistances = { readonly from: number; readonly to: number; readonly cosine: number };
