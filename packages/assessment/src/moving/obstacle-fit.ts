import type { Obstacle, Site } from '@boothwright/language';
import type { ObstacleFit } from '../result/moving-result.js';
import { textRange } from '../text/text-range.js';
import { metres, millimetresLeft, millimetresMissing } from './lengths.js';
import { type Box, obstacleBox, overlap, overPlan, rounding, type Side, sides, toWall } from './place.js';

/** The booth against one obstacle: whether they collide, by how much, and the shortest move along the floor that clears it. */
export function obstacleFit(obstacle: Obstacle, box: Box, site: Site): ObstacleFit {
  const other = obstacleBox(obstacle);
  const planned = overPlan(box, other);
  const collides = planned && overlap(box.z, other.z);
  const above = planned ? other.z[0] - box.z[1] : null;
  const gap = Math.hypot(
    Math.max(0, other.x[0] - box.x[1], box.x[0] - other.x[1]),
    Math.max(0, other.y[0] - box.y[1], box.y[0] - other.y[1]),
  );
  const move = collides ? shortestMove(box, other, site) : null;
  return {
    name: obstacle.name,
    range: textRange(obstacle.nameRange),
    collides,
    gapM: gap,
    aboveM: above,
    move,
    text: words(obstacle.name, box, other, { collides, above, gap, move }),
  };
}

function words(
  name: string,
  box: Box,
  other: Box,
  found: { collides: boolean; above: number | null; gap: number; move: ObstacleFit['move'] },
): string {
  if (found.collides) {
    const low = other.z[0] > rounding;
    const meets = low
      ? `its underside is at ${metres(other.z[0])} and the booth ${metres(box.z[1])} high, ${millimetresMissing(other.z[0] - box.z[1])} missing`
      : `it stands on the floor where the booth is to stand`;
    const way =
      found.move === null
        ? 'no move along one wall of the room clears it'
        : `${metres(upwards(found.move.byM))} towards the ${found.move.towards} clears it, ${metres(upwards(found.move.offWallM))} off the wall`;
    return `${name} is in the way: ${meets}; ${way}`;
  }
  if (found.above !== null) return `${name}: ${millimetresLeft(found.above)} above the booth`;
  return `${name}: ${metres(found.gap)} from the booth`;
}

/** Up to the next centimetre, so that the stated move is enough. */
function upwards(value: number): number {
  return Math.ceil(value * 100 - 1e-6) / 100;
}

/** The shortest move along one axis that clears it, stays in the room and meets nothing else. */
function shortestMove(box: Box, other: Box, site: Site): ObstacleFit['move'] {
  const room = site.room;
  if (room === undefined) return null;
  const others = site.obstacles.map(obstacleBox);
  const moves = sides.flatMap((towards) => {
    const by = distanceToClear(box, other, towards);
    const moved = shifted(box, towards, by);
    const inside = toWall(moved, towards, room) >= -rounding;
    const free = others.every((one) => !(overPlan(moved, one) && overlap(moved.z, one.z)));
    return inside && free ? [{ towards, byM: by, offWallM: toWall(moved, opposite(towards), room) }] : [];
  });
  return moves.sort((one, two) => one.byM - two.byM)[0] ?? null;
}

function distanceToClear(box: Box, other: Box, towards: Side): number {
  return {
    front: box.y[1] - other.y[0],
    back: other.y[1] - box.y[0],
    left: box.x[1] - other.x[0],
    right: other.x[1] - box.x[0],
  }[towards];
}

function shifted(box: Box, towards: Side, by: number): Box {
  const shift = ([from, to]: readonly [number, number], sign: number) => [from + sign * by, to + sign * by] as const;
  if (towards === 'front' || towards === 'back') return { ...box, y: shift(box.y, towards === 'back' ? 1 : -1) };
  return { ...box, x: shift(box.x, towards === 'right' ? 1 : -1) };
}

export function opposite(side: Side): Side {
  return ({ front: 'back', back: 'front', left: 'right', right: 'left' } as const)[side];
}
