import type { Booth, Door } from '@boothwright/language';
import type { JudgedContext } from '../assessment-context.js';
import type { Caution } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { boothUnread } from '../unread/booth-unread.js';
import { caution } from './caution-for.js';

const ask =
  'Ask your local building or fire officer. Keep the floor in front of the door clear, keep the booth away from the only door of the room, and have a light that works without mains.';

/** The way out: no door, a door that opens inwards, a lock, or a swing and lock that the text does not state. */
export function egress({ spec, booths }: JudgedContext): Caution[] {
  return booths.flatMap(({ booth }) => {
    const unread = boothUnread(spec, booth.name).length > 0;
    if (booth.doors.length === 0) return [withoutDoor(booth, unread)];
    return booth.doors.flatMap((door) => [...swing(door, unread), ...lock(door, unread)]);
  });
}

/** What the text does not say, or what is not known because it has errors. */
function notStated(unread: boolean): string {
  return unread ? 'could not be read: the text has errors' : 'is not stated';
}

function withoutDoor(booth: Booth, unread: boolean): Caution {
  if (unread) {
    return caution('no-door', booth.nameRange, {
      hazard: 'No way out could be read: the text has errors',
      why: 'No door was found in what could be read. Mend the errors first; until then nothing can be said about leaving the booth.',
      ask,
    });
  }
  return caution('no-door', booth.nameRange, {
    hazard: 'No way out is described',
    why: 'The text gives no door, so nothing can be said about leaving the booth, and no leak of a door is counted.',
    ask,
  });
}

function swing(door: Door, unread: boolean): Caution[] {
  if (door.swing?.value === 'outward') return [];
  const size = `${decimals(door.size.width.value * 1000, 0)} mm x ${decimals(door.size.height.value * 1000, 0)} mm`;
  if (door.swing === undefined) {
    return [
      caution('door-swing-not-stated', door.nameRange, {
        hazard: `Which way door ${door.name} opens ${notStated(unread)}`,
        number: size,
        why: 'A person who falls inside a small booth can block a door that opens inwards. Practice for small speech booths is a hinged door that opens outwards without a lock.',
        ask,
      }),
    ];
  }
  return [
    caution('door-opens-inward', door.swing.range, {
      hazard: `Door ${door.name} opens inwards: somebody who has fallen inside can block it`,
      number: size,
      why: 'In a small booth there is no room to step aside, and higher pressure from a fan can hold the door too. Practice for small speech booths is a hinged door that opens outwards without a lock.',
      ask,
    }),
  ];
}

function lock(door: Door, unread: boolean): Caution[] {
  if (door.lock?.value === 'none') return [];
  if (door.lock?.value === 'latch') {
    return [
      caution('door-latch', door.lock.range, {
        hazard: `Door ${door.name} has a latch: it must open from inside with one push, in the dark`,
        why: 'Latches that pull a gasket tight can need two hands or strength; children may not reach them.',
        ask,
      }),
    ];
  }
  return [
    caution(door.lock === undefined ? 'door-lock-not-stated' : 'door-lock', door.lock?.range ?? door.nameRange, {
      hazard:
        door.lock === undefined
          ? `Whether door ${door.name} has a lock ${notStated(unread)}`
          : `Door ${door.name} has a lock: somebody can be shut in`,
      why: 'A booth is a box that closes and keeps calls for help in. Practice for small speech booths is no lock at all.',
      ask,
    }),
  ];
}
