import type { BoothResult } from '@boothwright/assessment';
import { bandName } from '../../numbers/format-frequency.js';
import { bandLevel, totalsText } from '../../numbers/level-words.js';
import { octaveCentres, octaveLevels } from '../../numbers/octaves.js';
import { printable } from '../printable.js';
import { joinLines, section } from '../section.js';
import type { TextStyle } from '../text-style.js';
import { textTable } from '../text-table.js';
import { wrapText } from '../wrap-text.js';

/** The voice outside the booth. */
export function getsOutSection(booth: BoothResult, suffix: string, style: TextStyle): string | undefined {
  const voice = booth.voiceOutside;
  if (!voice) return undefined;
  return section(
    `What gets out${suffix}, octave bands in dB`,
    joinLines(
      textTable(
        [{ head: 'voice' }, ...octaveCentres.map((hz) => ({ head: bandName(hz), align: 'right' as const }))],
        [[`${printable(voice.effort)}, outside`, ...octaveLevels(voice.byBand).map(bandLevel)]],
      ),
      wrapText(printable(`${voice.where}: ${totalsText(voice)}`), style.width, '  ', '    '),
      voice.note && wrapText(printable(voice.note), style.width, '  ', '    '),
    ),
    style,
  );
}
