import type { Booth, Obstacle, Site } from '@boothwright/language';
import { outsideSize } from '../booth/geometry.js';
import type { SideGap } from '../result/moving-result.js';

/** A box in the axes of the room, m. */
export interface Box {
  readonly x: readonly [number, number];
  readonly y: readonly [number, number];
  readonly z: readonly [number, number];
}

export type Side = SideGap['side'];
export const sides: readonly Side[] = ['front', 'back', 'left', 'right'];

/** Where the booth stands in its room; undefined unless the text says both. */
export function boothBox(booth: Booth, site: Site | undefined): Box | undefined {
  if (booth.standsAt === undefined || site?.room === undefined) return undefined;
  const [width, depth, height] = outsideSize(booth);
  const x = booth.standsAt.x.value;
  const y = booth.standsAt.y.value;
  return { x: [x, x + width], y: [y, y + depth], z: [0, height] };
}

export function obstacleBox({ position, size }: Obstacle): Box {
  const span = (from: number, length: number) => [from, from + length] as const;
  return {
    x: span(position.x.value, size.width.value),
    y: span(position.y.value, size.depth.value),
    z: span(position.z.value, size.height.value),
  };
}

/** Rounding of sums of lengths, m. */
export const rounding = 1e-9;

/** True where two spans share more than a touch. */
export function overlap(one: readonly [number, number], other: readonly [number, number]): boolean {
  return Math.min(one[1], other[1]) - Math.max(one[0], other[0]) > rounding;
}

/** True where two boxes overlap seen from above. */
export function overPlan(one: Box, other: Box): boolean {
  return overlap(one.x, other.x) && overlap(one.y, other.y);
}

/** The strip of the room before a side of a box, `length` deep, m. */
export function stripBefore(box: Box, side: Side, length: number): Box {
  switch (side) {
    case 'front':
      return { ...box, y: [box.y[0] - length, box.y[0]] };
    case 'back':
      return { ...box, y: [box.y[1], box.y[1] + length] };
    case 'left':
      return { ...box, x: [box.x[0] - length, box.x[0]] };
    case 'right':
      return { ...box, x: [box.x[1], box.x[1] + length] };
  }
}

/** m from a side of a box to the wall of the room that it faces. */
export function toWall(box: Box, side: Side, room: NonNullable<Site['room']>): number {
  switch (side) {
    case 'front':
      return box.y[0];
    case 'back':
      return room.depth.value - box.y[1];
    case 'left':
      return box.x[0];
    case 'right':
      return room.width.value - box.x[1];
  }
}

/** m from a side of a box to something that stands before it; undefined for what does not. */
export function toObstacle(box: Box, side: Side, obstacle: Box): number | undefined {
  const before = stripBefore(box, side, Number.MAX_VALUE);
  if (!overPlan(before, obstacle)) return undefined;
  const gap = {
    front: box.y[0] - obstacle.y[1],
    back: obstacle.y[0] - box.y[1],
    left: box.x[0] - obstacle.x[1],
    right: obstacle.x[0] - box.x[1],
  }[side];
  return Math.max(0, gap);
}
