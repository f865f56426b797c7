import type { Site } from '@boothwright/language';
import type { SideGap } from '../result/moving-result.js';
import { type Box, obstacleBox, rounding, sides, toObstacle, toWall } from './place.js';
import { walkUnder, workingGap } from './practice.js';

/** What is left around the booth for hands and people. What hangs high enough to walk under does not count. */
export function sideGaps(box: Box, site: Site): SideGap[] {
  const room = site.room;
  if (room === undefined) return [];
  return sides.map((side) => {
    const wall = toWall(box, side, room);
    let free = wall;
    let before: string | null = null;
    for (const obstacle of site.obstacles) {
      const other = obstacleBox(obstacle);
      if (other.z[0] >= walkUnder) continue;
      const gap = toObstacle(box, side, other);
      if (gap !== undefined && gap < free) {
        free = gap;
        before = obstacle.name;
      }
    }
    return { side, toWallM: wall, freeM: free, obstacle: before, reachable: free >= workingGap - rounding };
  });
}
