import type { Site } from '@boothwright/language';
import { type Box, obstacleBox, overPlan } from './place.js';

/** The lowest thing over a stretch of floor: the ceiling, or an obstacle that hangs there; what stands on the floor is none. */
export function ceilingOver(area: Box | undefined, site: Site): { height: number; name: string } | undefined {
  const room = site.room;
  if (room === undefined) return undefined;
  let lowest = { height: room.height.value, name: 'ceiling' };
  if (area === undefined) return lowest;
  for (const obstacle of site.obstacles) {
    const box = obstacleBox(obstacle);
    if (box.z[0] > 0 && box.z[0] < lowest.height && overPlan(area, box)) {
      lowest = { height: box.z[0], name: obstacle.name };
    }
  }
  return lowest;
}
