import type { BoothResult } from '@boothwright/assessment';
import { formatFigures, formatNumber } from '../../numbers/format-number.js';
import { rangedText } from '../../numbers/level-words.js';
import { printable } from '../printable.js';
import { joinLines, section } from '../section.js';
import type { TextStyle } from '../text-style.js';
import { wrapText } from '../wrap-text.js';

/** Room tone in the file with all that the figure depends on; without a microphone and a voice there is none. */
export function roomToneSection(booth: BoothResult, suffix: string, style: TextStyle): string | undefined {
  const tone = booth.noise.roomTone;
  if (!tone) return undefined;
  const filter = tone.highPassHz === null ? 'no high-pass' : `high-pass ${formatFigures(tone.highPassHz)} Hz`;
  const line =
    `${rangedText(tone.dBFS, 'dBFS')} RMS unweighted: at the capsule the voice has ${formatNumber(tone.voiceAtCapsuleDbZ)} dB at ` +
    `${formatFigures(tone.distanceM)} m, set to ${formatNumber(tone.voiceSetToDbFS)} dBFS; the noise has ${formatNumber(tone.noiseAtCapsuleDbZ)} dB; ${filter}`;
  return section(
    `Room tone${suffix}`,
    joinLines(
      wrapText(line, style.width, '  ', '    '),
      tone.note && wrapText(printable(tone.note), style.width, '  ', '    '),
    ),
    style,
  );
}
