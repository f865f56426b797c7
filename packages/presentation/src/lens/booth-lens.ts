import type { ResultDocument } from '@boothwright/assessment';
import { rangedText } from '../numbers/level-words.js';
import { verdictSign } from './verdict-sign.js';

/** A booth in one line: `✗ 2 of 8 requirements missed · 26 dBA inside (23 to 29) · room tone -54 dBFS (-58 to -50)`. */
export function boothLens(name: string, results: ResultDocument): string | undefined {
  const booth = results.booths[name];
  if (booth === undefined) return undefined;
  const { noise, voiceOutside } = booth;
  const own = results.requirements.filter((requirement) => requirement.booth === name || requirement.booth === null);
  return [
    verdictSign(own),
    noise.total.dBA && `${rangedText(noise.total.dBA, 'dBA')} inside`,
    noise.roomTone && `room tone ${rangedText(noise.roomTone.dBFS, 'dBFS')}`,
    voiceOutside?.dBA && `voice outside ${rangedText(voiceOutside.dBA, 'dBA')}`,
  ]
    .filter(Boolean)
    .join(' · ');
}
