import type { Air } from '@boothwright/acoustics';
import type { Booth } from '@boothwright/language';
import type { Memo } from '../memo/memo.js';
import type { BoothPath } from './booth-path.js';
import { facePath } from './face-path.js';
import { faceNames } from './geometry.js';
import { liesOnFloor } from './lies-on-floor.js';
import { doorSealPaths } from './openings/door-seal-paths.js';
import { holePath } from './openings/hole-path.js';
import { sheetPath } from './openings/sheet-path.js';
import { slitPath } from './openings/slit-path.js';
import { ventPath } from './openings/vent-path.js';
import { partSizes } from './part-sizes.js';

/** Every way in, in a fixed order: faces, doors with their seals, windows, vents, slits, holes. */
export function pathsOf(booth: Booth, air: Air, memo: Memo): BoothPath[] {
  const sizes = partSizes(booth);
  return [
    ...faceNames
      .filter((face) => face !== 'floor' || !liesOnFloor(booth))
      .map((face) => facePath(booth, face, air, memo, sizes)),
    ...booth.doors.flatMap((door) => [
      sheetPath(door, 'door', door.leaf, air, memo, sizes),
      ...doorSealPaths(door, air, memo),
    ]),
    ...booth.windows.map((window) => sheetPath(window, 'window', window.pane, air, memo, sizes)),
    ...booth.vents.map((vent) => ventPath(vent, air)),
    ...booth.slits.map((slit) =>
      slitPath(
        {
          id: `slit:${slit.name}`,
          kind: 'slit',
          name: slit.name,
          range: slit.nameRange,
          length: slit.length.value,
          gap: slit.gap,
          depth: slit.depth.value,
          position: 'mid',
        },
        air,
        memo,
      ),
    ),
    ...booth.holes.map((hole) => holePath(hole, air, memo)),
  ].filter((path) => path !== undefined);
}
