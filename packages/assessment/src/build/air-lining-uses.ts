import type { Booth, MaterialLayer } from '@boothwright/language';
import { ductArea } from '../booth/openings/duct-area.js';
import { type AreaUse, usesOf } from './area-uses.js';

/**
 * Linings of ducts, boxes and mazes, m2: round the clear section of a duct or maze along its way, on the six inner faces of
 * a box without the two holes for the duct. Without offcuts.
 */
export function airLiningUses(booth: Booth): AreaUse[] {
  return booth.vents.flatMap((vent) => {
    const hole = ductArea(vent);
    const around =
      vent.duct.kind === 'round' ? 2 * Math.sqrt(Math.PI * hole) : 2 * (vent.duct.width.value + vent.duct.height.value);
    const { maze } = vent;
    return [
      ...lining(`duct of ${vent.name}`, vent.lining, around * vent.run.value),
      ...vent.chambers.flatMap(({ size, lining: own }, index) => {
        const [a, b, c] = [size.width.value, size.depth.value, size.height.value];
        const faces = 2 * (a * b + b * c + a * c);
        return lining(`box ${index + 1} of ${vent.name}`, own, Math.max(0, faces - 2 * hole));
      }),
      ...(maze === undefined
        ? []
        : lining(
            `maze of ${vent.name}`,
            maze.lining,
            2 * (maze.channel.width.value + maze.channel.height.value) * (maze.turns.value + 1) * maze.leg.value,
          )),
    ];
  });
}

function lining(owner: string, layer: MaterialLayer | undefined, area: number): AreaUse[] {
  return layer === undefined ? [] : usesOf(owner, [layer], area);
}
