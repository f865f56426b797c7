import type { Booth } from '../../model/booth-spec.js';
import { WALLS } from '../../vocabulary/words.js';
import { type CheckContext, complain } from '../context.js';
import { millimetres } from '../millimetres.js';
import { fitAboveEachOther, type Standing } from './above-each-other.js';
import { SLACK } from './slack.js';

/**
 * Openings of one wall that cannot stand above each other must stand side by side, wherever that is. Those whose places
 * are given are compared by their places.
 */
export function checkSideBySide(ctx: CheckContext, booth: Booth): void {
  const { width, depth, height } = booth.inside;
  for (const face of WALLS) {
    const wall = face === 'front' || face === 'back' ? width : depth;
    const here: readonly Standing[] = [
      ...booth.doors.map((opening) => ({ opening, isDoor: true })),
      ...booth.windows.map((opening) => ({ opening, isDoor: false })),
    ].filter(({ opening }) => opening.face === face && opening.size.width.value <= wall.value + SLACK);
    const set = tooWide(here, wall.value, height.value);
    if (!set) continue;
    const names = set.map(({ opening }) => `\`${opening.name}\``);
    const widths = set.map(({ opening }) => millimetres(opening.size.width.value));
    complain(
      ctx,
      'openings-too-wide',
      set.at(-1)!.opening.nameRange,
      `${names.slice(0, -1).join(', ')} and ${names.at(-1)} do not fit side by side: ${widths.join(' + ')} is more than the ${millimetres(wall.value)} inside \`${face}\``,
      {
        related: [
          ...set
            .slice(0, -1)
            .map(({ opening }) => ({ range: opening.nameRange, message: `\`${opening.name}\` is here` })),
          { range: wall.range, message: 'the inside is this large' },
        ],
      },
    );
  }
}

/** The first openings that must stand side by side, with a place left open, and are wider together than their wall. */
function tooWide(here: readonly Standing[], wall: number, height: number): readonly Standing[] | undefined {
  const free = (set: readonly Standing[]): boolean => set.some(({ opening }) => !opening.offset);
  const wide = (set: readonly Standing[]): boolean =>
    set.reduce((sum, { opening }) => sum + opening.size.width.value, 0) > wall + SLACK;
  for (const [i, b] of here.entries()) {
    for (const a of here.slice(0, i)) {
      if (!fitAboveEachOther(a, b, height) && free([a, b]) && wide([a, b])) return [a, b];
    }
  }
  const doors = here.filter(({ isDoor }) => isDoor);
  return doors.length > 2 && free(doors) && wide(doors) ? doors : undefined;
}
