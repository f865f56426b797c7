import type { Session, Site } from '@boothwright/language';
import { knownBands } from '../bands/band-names.js';
import { levelTotals } from '../noise/level-totals.js';
import type { BoothResult } from '../result/result-document.js';
import { levelsAt } from './levels-at.js';
import { effortBasis, effortOutside } from './voice-efforts.js';
import type { VoiceTransfer } from './voice-transfer.js';

/** Level of the talker of the session in the room around the booth; null without the room or a session. */
export function voiceOutside(
  transfer: VoiceTransfer | null,
  site: Site | undefined,
  session: Session | undefined,
): BoothResult['voiceOutside'] {
  if (transfer === null || site === undefined || session === undefined) return null;
  const effort = session.effort.value;
  const { byBand, halfWidth } = levelsAt(effortOutside(effort), transfer);
  return {
    ...levelTotals(byBand, halfWidth, `${effort} voice through the booth`),
    effort,
    where: site.title ?? 'the room around the booth',
    note: `Levels from ${knownBands(byBand)}: the standard speech spectrum says nothing below 160 Hz, where a low voice still has energy. Walls between this room and the next are not counted. Voice: ${effortBasis(effortOutside(effort))}.`,
  };
}
