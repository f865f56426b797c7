import { type Air, weightedTotal } from '@boothwright/acoustics';
import type { Neighbour, Session, Site } from '@boothwright/language';
import type { Memo } from '../memo/memo.js';
import { levelTotals, rangedTotal } from '../noise/level-totals.js';
import type { VoiceAt } from '../result/voice-result.js';
import { textRange } from '../text/text-range.js';
import { levelsAt } from './levels-at.js';
import { missingOfNeighbour, neighbourTransfer } from './neighbour-transfer.js';
import { effortOutside, effortSpectrum, voiceEfforts } from './voice-efforts.js';
import type { VoiceTransfer } from './voice-transfer.js';

const roomMissing = 'the size of the room around the booth (`room` in `site`)';
const leftOut =
  'Sound through air alone: a rigid contact of the booth with a joist, wall or pipe carries the voice past all of it, and so do side walls.';

/** The voice in the room around the booth and at every neighbour, by effort; empty without a site. */
export function voiceAt(
  toRoom: VoiceTransfer | null,
  site: Site | undefined,
  session: Session | undefined,
  air: Air,
  memo: Memo,
): VoiceAt[] {
  if (site === undefined) return [];
  const room = {
    place: null,
    title: site.title ?? 'the room around the booth',
    side: 'room' as const,
    range: null,
  };
  return [
    placeResult(room, toRoom, toRoom === null ? [roomMissing] : [], session),
    ...site.neighbours.map((neighbour) => neighbourResult(neighbour, toRoom, session, air, memo)),
  ];
}

function neighbourResult(
  neighbour: Neighbour,
  toRoom: VoiceTransfer | null,
  session: Session | undefined,
  air: Air,
  memo: Memo,
): VoiceAt {
  const missing = [...(toRoom === null ? [roomMissing] : []), ...missingOfNeighbour(neighbour)];
  const transfer = toRoom === null ? null : neighbourTransfer(toRoom, neighbour, air, memo);
  const { name, title, side, nameRange } = neighbour;
  return placeResult(
    { place: name, title: title ?? name, side: side.value, range: textRange(nameRange) },
    transfer,
    missing,
    session,
  );
}

function placeResult(
  place: Pick<VoiceAt, 'place' | 'title' | 'side' | 'range'>,
  transfer: VoiceTransfer | null,
  missing: readonly string[],
  session: Session | undefined,
): VoiceAt {
  if (transfer === null) return { ...place, byEffort: [], session: null, missing, note: leftOut };
  const effort = session === undefined ? null : effortOutside(session.effort.value);
  const atSession = effort === null ? null : levelsAt(effort, transfer);
  return {
    ...place,
    byEffort: voiceEfforts.map((each) => {
      const { byBand, halfWidth } = levelsAt(each, transfer);
      return {
        effort: each,
        at1mDbA: weightedTotal(effortSpectrum(each), 'A') as number,
        dBA: rangedTotal(byBand, halfWidth, 'A', 'voice through the booth by air; docs/models/voice-outside.md'),
      };
    }),
    session:
      effort === null || atSession === null
        ? null
        : { ...levelTotals(atSession.byBand, atSession.halfWidth, `${effort} voice by air`), effort },
    missing,
    note: leftOut,
  };
}
