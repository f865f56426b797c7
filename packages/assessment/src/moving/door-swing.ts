import type { Door, Site } from '@boothwright/language';
import type { DoorSwing } from '../result/moving-result.js';
import { decimals } from '../text/decimals.js';
import { textRange } from '../text/text-range.js';
import { metres } from './lengths.js';
import { type Box, obstacleBox, rounding, type Side, toObstacle, toWall } from './place.js';

/**
 * How far a door that opens outwards opens before it meets the wall of the room or an obstacle: the free edge of a leaf of
 * width w, opened by the angle a, stands w sin a before the face, so it stops at a = arcsin(free / w), or opens at least
 * to a right angle where free >= w.
 */
export function doorSwing(door: Door, box: Box | undefined, site: Site | undefined): DoorSwing {
  const leaf = door.size.width.value;
  const swing = door.swing?.value ?? 'outward';
  const base = { door: door.name, range: textRange(door.nameRange), swing, leafM: leaf } as const;
  const face = door.face;
  if (swing === 'inward') {
    return { ...base, freeM: null, before: null, opensDeg: null, text: `door ${door.name} opens into the booth` };
  }
  if (box === undefined || site?.room === undefined || face === 'roof' || face === 'floor') {
    return {
      ...base,
      freeM: null,
      before: null,
      opensDeg: null,
      text: `door ${door.name} needs ${metres(leaf)} of free floor before it`,
    };
  }
  const before = leafBox(door, face, box);
  let free = toWall(before, face, site.room);
  let name = 'the wall of the room';
  for (const obstacle of site.obstacles) {
    const gap = toObstacle(before, face, obstacleBox(obstacle));
    const hits = obstacle.position.z.value < door.size.height.value;
    if (gap !== undefined && hits && gap < free) {
      free = gap;
      name = obstacle.name;
    }
  }
  const opens = free >= leaf - rounding ? 90 : (Math.asin(Math.max(0, free) / leaf) * 180) / Math.PI;
  const text =
    opens >= 90
      ? `door ${door.name} opens: ${metres(free)} of free floor before a leaf of ${metres(leaf)}`
      : `door ${door.name} opens only ${decimals(Math.floor(opens), 0)} degrees: ${metres(Math.max(0, free))} before ${name}, the leaf is ${metres(leaf)} wide`;
  return { ...base, freeM: free, before: name, opensDeg: opens, text };
}

/** The stretch of a face in which the door stands; the whole face where its place is not said. */
function leafBox(door: Door, face: Side, box: Box): Box {
  if (door.offset === undefined) return box;
  const from = door.offset.value;
  const to = from + door.size.width.value;
  // From the left edge of the face as seen from outside.
  switch (face) {
    case 'front':
      return { ...box, x: [box.x[0] + from, box.x[0] + to] };
    case 'back':
      return { ...box, x: [box.x[1] - to, box.x[1] - from] };
    case 'left':
      return { ...box, y: [box.y[1] - to, box.y[1] - from] };
    case 'right':
      return { ...box, y: [box.y[0] + from, box.y[0] + to] };
  }
}
