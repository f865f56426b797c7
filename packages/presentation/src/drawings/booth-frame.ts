import type { BoothResult } from '@boothwright/assessment';
import type { Booth, Face } from '@boothwright/language';
import { layersThickness } from './layer-words.js';

export const faceNames: readonly Face[] = ['front', 'back', 'left', 'right', 'roof', 'floor'];

export type Size = readonly [width: number, depth: number, height: number];

/** The bare box of a booth, m. */
export interface BoothFrame {
  readonly outside: Size;
  readonly inside: Size;
  /** From the outside left front corner on the ground to the inside one. */
  readonly origin: Size;
  /** Of the build-up of each face; zero for a face without one. */
  readonly thickness: Readonly<Record<Face, number>>;
  /** Of the thickest lining of each face. */
  readonly lining: Readonly<Record<Face, number>>;
  readonly open: Readonly<Record<Face, boolean>>;
}

/** Sizes as stated; the outside, where it is not, is the inside and the build-ups around it. */
export function boothFrame(booth: Booth, result?: BoothResult): BoothFrame {
  const inside: Size = [booth.inside.width.value, booth.inside.depth.value, booth.inside.height.value];
  const of = <T>(make: (face: Face) => T) =>
    Object.fromEntries(faceNames.map((face) => [face, make(face)])) as Record<Face, T>;
  const thickness = of((face) => layersThickness(booth.faces[face]?.assembly.layers ?? []));
  const lining = of((face) =>
    Math.max(
      0,
      ...booth.linings.filter(({ faces }) => faces.includes(face)).map(({ layers }) => layersThickness(layers)),
    ),
  );
  const stated = booth.outside;
  const outside: Size =
    result?.geometry.outsideM ??
    (stated === undefined
      ? [
          inside[0] + thickness.left + thickness.right,
          inside[1] + thickness.front + thickness.back,
          inside[2] + thickness.roof + thickness.floor,
        ]
      : [stated.width.value, stated.depth.value, stated.height.value]);
  // Stated sizes may not add up; then what lies left, before and below the room keeps its thickness as far as it can.
  const origin = ([thickness.left, thickness.front, thickness.floor] as const).map((own, axis) =>
    Math.max(0, Math.min(own, outside[axis]! - inside[axis]!)),
  );
  return {
    outside,
    inside,
    origin: origin as unknown as Size,
    thickness,
    lining,
    open: of((face) => booth.faces[face] === undefined),
  };
}

/** Whether the sizes are ones that can be drawn; the checker refuses most others. */
export function isDrawable({ outside, inside }: BoothFrame): boolean {
  return [...outside, ...inside].every((metres) => Number.isFinite(metres) && metres > 0 && metres < 100);
}

/** Width and height of a face as it is seen from outside; of roof and floor width and depth. */
export function faceSize([width, depth, height]: Size, face: Face): readonly [number, number] {
  if (face === 'front' || face === 'back') return [width, height];
  return face === 'left' || face === 'right' ? [depth, height] : [width, depth];
}
