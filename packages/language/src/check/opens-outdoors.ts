import type { Program } from './context.js';

/** True when a vent of any booth draws its air from outdoors or sends it there. */
export function opensOutdoors({ statements }: Program): boolean {
  return statements.some(
    ({ fact, block }) =>
      fact?.keyword === 'booth' &&
      block?.statements.some(
        (opening) =>
          opening.fact?.keyword === 'vent' &&
          opening.block?.statements.some(
            (line) =>
              line.fact?.keyword === 'opens-to' &&
              [...line.slots.values()].some((slot) => slot.kind === 'word' && slot.word === 'outdoors'),
          ),
      ),
  );
}
