import type { Booth, Face } from '@boothwright/language';
import { assemblyThickness } from '../assembly/thickness.js';
import { outsideSize } from '../booth/geometry.js';
import type { BoxInBooth } from '../result/build-result.js';
import { type Skin, skinsOf } from './skins.js';

/** One shell of one face as it stands in the booth. */
export interface FaceExtent {
  readonly face: Face;
  readonly skin: Skin;
  readonly leaf: 'whole' | 'outer' | 'inner';
  /** m, along the face from its left edge as seen from outside; of roof and floor the longer side */
  readonly lengthM: number;
  /** m, upwards; of roof and floor the shorter side */
  readonly heightM: number;
  /** m from the left edge of the outer face to that of the shell; of roof and floor from the front or left edge of the booth */
  readonly startM: number;
  /** m, of the whole outer face */
  readonly faceLengthM: number;
  /** m above the floor of the building */
  readonly baseM: number;
  /** The stretch of it from `offset` (from its left edge) and `base` (from its lower edge). */
  box(offset: number, length: number, base: number, height: number): BoxInBooth;
}

const walls = ['front', 'back', 'left', 'right'] as const;

/** Height of the inside floor above the ground when the walls stand on the ground, m. */
export function deckHeight(booth: Booth): number {
  return assemblyThickness(booth.faces.floor?.assembly.layers ?? []);
}

/** Springs carry the deck, and the deck then carries the walls; otherwise the walls stand on the floor of the building. */
export function deckCarriesWalls(booth: Booth): boolean {
  return booth.mounts !== undefined && booth.faces.floor !== undefined;
}

/**
 * How the shells meet: front and back run over the whole width, left and right stand between them, the roof lies on the
 * walls and the deck between them. With springs under the booth the deck lies under the walls.
 */
export function faceExtents(booth: Booth): FaceExtent[] {
  const [width, depth, height] = outsideSize(booth);
  const skins = (face: Face) => skinsOf(booth.faces[face]?.assembly.layers ?? []);
  const bySide = new Map((['front', 'back', 'left', 'right', 'roof', 'floor'] as const).map((f) => [f, skins(f)]));
  const nth = (face: Face, index: number) => {
    const own = bySide.get(face) as Skin[];
    return own[Math.min(index, own.length - 1)];
  };
  const from = (face: Face, index: number) => nth(face, index)?.fromM ?? 0;
  const end = (face: Face, index: number) => from(face, index) + (nth(face, index)?.thicknessM ?? 0);
  const base = deckCarriesWalls(booth) ? deckHeight(booth) : 0;
  const extents: FaceExtent[] = [];

  const add = (face: Face, index: number, make: (skin: Skin) => Omit<FaceExtent, 'face' | 'skin' | 'leaf'>) => {
    const own = bySide.get(face) as Skin[];
    const skin = own[index];
    if (skin === undefined) return;
    const leaf = own.length === 1 ? 'whole' : index === 0 ? 'outer' : 'inner';
    const extent = make(skin);
    if (extent.lengthM > 1e-6 && extent.heightM > 1e-6) extents.push({ face, skin, leaf, ...extent });
  };

  for (const face of walls) {
    for (let index = 0; index < (bySide.get(face) as Skin[]).length; index += 1) {
      const heightM = height - end('roof', index) - base;
      const long = face === 'front' || face === 'back';
      add(face, index, (skin) => {
        const [left, right] = sides[face];
        const edge = (side: Face) => (long ? from(side, index) : end(side, index));
        const faceLengthM = long ? width : depth;
        return {
          lengthM: faceLengthM - edge(left) - edge(right),
          heightM,
          startM: edge(left),
          faceLengthM,
          baseM: base,
          box: (offset, length, up, high) => {
            const along = edge(left) + offset;
            const common = { zM: base + up, heightM: high };
            if (face === 'front')
              return { ...common, xM: along, yM: skin.fromM, widthM: length, depthM: skin.thicknessM };
            if (face === 'back') {
              const yM = depth - skin.fromM - skin.thicknessM;
              return { ...common, xM: width - along - length, yM, widthM: length, depthM: skin.thicknessM };
            }
            if (face === 'right') {
              const xM = width - skin.fromM - skin.thicknessM;
              return { ...common, xM, yM: along, widthM: skin.thicknessM, depthM: length };
            }
            return { ...common, xM: skin.fromM, yM: depth - along - length, widthM: skin.thicknessM, depthM: length };
          },
        };
      });
    }
  }
  for (let index = 0; index < (bySide.get('roof') as Skin[]).length; index += 1) {
    add('roof', index, (skin) => {
      const inset = { left: from('left', index), right: from('right', index), front: from('front', index) };
      const size = {
        width: width - inset.left - inset.right,
        depth: depth - inset.front - from('back', index),
      };
      const zM = height - skin.fromM - skin.thicknessM;
      return flat(size, { x: inset.left, y: inset.front, z: zM }, skin);
    });
  }
  (bySide.get('floor') as Skin[]).forEach((_, index) => {
    add('floor', index, (skin) => {
      const under = deckCarriesWalls(booth);
      const last = (face: Face) => (under ? 0 : end(face, Number.POSITIVE_INFINITY));
      const size = { width: width - last('left') - last('right'), depth: depth - last('front') - last('back') };
      return flat(size, { x: last('left'), y: last('front'), z: skin.fromM }, skin);
    });
  });
  return extents;
}

/** Which faces stand at the left and at the right edge of a wall, as seen from outside. */
const sides = {
  front: ['left', 'right'],
  back: ['right', 'left'],
  left: ['back', 'front'],
  right: ['front', 'back'],
} as const;

function flat(
  size: { readonly width: number; readonly depth: number },
  corner: { readonly x: number; readonly y: number; readonly z: number },
  skin: Skin,
): Omit<FaceExtent, 'face' | 'skin' | 'leaf'> {
  const alongDepth = size.depth >= size.width;
  const startM = alongDepth ? corner.y : corner.x;
  const lengthM = alongDepth ? size.depth : size.width;
  return {
    lengthM,
    heightM: alongDepth ? size.width : size.depth,
    startM,
    faceLengthM: lengthM,
    baseM: corner.z,
    box: (offset, length, up, high) => ({
      xM: corner.x + (alongDepth ? up : offset),
      yM: corner.y + (alongDepth ? offset : up),
      zM: corner.z,
      widthM: alongDepth ? high : length,
      depthM: alongDepth ? length : high,
      heightM: skin.thicknessM,
    }),
  };
}
