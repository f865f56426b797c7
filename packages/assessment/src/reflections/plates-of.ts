import type { Equipment } from '@boothwright/language';
import type { TextRange } from '../result/result-values.js';
import { textRange } from '../text/text-range.js';
import { plus, type Vector } from './vectors.js';

/** One flat side of a thing in the booth. */
export interface Plate {
  readonly thing: Equipment;
  readonly range: TextRange;
  readonly middle: Vector;
  /** Of length 1, away from the thing. */
  readonly normal: Vector;
  /** Directions of its two edges, of length 1, and half its extent along each, m. */
  readonly edges: readonly [PlateEdge, PlateEdge];
  readonly absorption: number;
}

export interface PlateEdge {
  readonly direction: Vector;
  readonly half: number;
}

/** The six sides of a thing, leant back about the width: its top goes away from the front wall by `tilt` degrees. */
export function platesOf(thing: Equipment, tilt: number = thing.tilt.value, absorption?: number): Plate[] {
  if (thing.size === undefined) return [];
  const angle = (tilt * Math.PI) / 180;
  const { x, y, z } = thing.position;
  const middle: Vector = [x.value, y.value, z.value];
  const edges: readonly PlateEdge[] = [
    { direction: [1, 0, 0], half: thing.size.width.value / 2 },
    { direction: [0, Math.cos(angle), -Math.sin(angle)], half: thing.size.depth.value / 2 },
    { direction: [0, Math.sin(angle), Math.cos(angle)], half: thing.size.height.value / 2 },
  ];
  return edges.flatMap(({ direction, half }, axis) => {
    const across = edges.filter((_, other) => other !== axis) as [PlateEdge, PlateEdge];
    return [1, -1].map((side) => ({
      thing,
      range: textRange(thing.nameRange),
      middle: plus(middle, direction, side * half),
      normal: direction.map((part) => side * part) as unknown as Vector,
      edges: across,
      absorption: absorption ?? thing.absorption.value,
    }));
  });
}
