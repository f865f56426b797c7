import type { Booth, Site } from '@boothwright/language';
import { outsideSize } from '../booth/geometry.js';
import { boothBox, rounding, sides, toWall } from './place.js';

/**
 * m by which the booth sticks out of its room in plan: through a wall where its place is known, else along a direction in
 * which it is longer than the room as drawn.
 */
export function beyondRoom(booth: Booth, site: Site): { what: string; byM: number }[] {
  const room = site.room;
  if (room === undefined) return [];
  const box = boothBox(booth, site);
  const [width, depth] = outsideSize(booth);
  const beyond =
    box === undefined
      ? [
          { what: 'width', byM: width - room.width.value },
          { what: 'depth', byM: depth - room.depth.value },
        ]
      : sides.map((side) => ({ what: side, byM: -toWall(box, side, room) }));
  return beyond.filter(({ byM }) => byM > rounding);
}
