import type { JudgedContext } from '../assessment-context.js';
import type { Caution } from '../result/result-document.js';
import { note } from './note-for.js';

/** A booth is a box that closes. */
export function children({ booths }: JudgedContext): Caution[] {
  return booths.flatMap(({ booth }) =>
    booth.doors.map((door) =>
      note('children-and-pets', door.nameRange, {
        hazard: 'A box that closes: children and pets',
        why: 'From inside a quiet booth nobody hears a call, and a door that is pulled tight on its seals needs strength.',
        ask: 'Have a handle at child height on both sides and no catch that shuts by itself; keep the door open, or the room shut, when nobody works, and ask those who live there what could go wrong.',
      }),
    ),
  );
}
