import type { BoothResult, RequirementResult } from '@boothwright/assessment';
import { bandName } from '../../numbers/format-frequency.js';
import { formatFigures, formatNumber } from '../../numbers/format-number.js';
import { rangedText, shareText } from '../../numbers/level-words.js';
import { octaveCentres } from '../../numbers/octaves.js';
import { printable } from '../printable.js';
import { joinLines, section } from '../section.js';
import type { TextStyle } from '../text-style.js';
import { wrapText } from '../wrap-text.js';

type Tone = NonNullable<BoothResult['noise']['roomTone']>;

/** Room tone in the file with all that the figure depends on; without a microphone and a voice there is none. */
export function roomToneSection(
  booth: BoothResult,
  asked: readonly RequirementResult[],
  suffix: string,
  style: TextStyle,
): string | undefined {
  const tone = booth.noise.roomTone;
  if (!tone) return undefined;
  const wrapped = (text: string) => wrapText(printable(text), style.width, '  ', '    ');
  const filter = tone.highPassHz === null ? 'no high-pass' : `high-pass ${formatFigures(tone.highPassHz)} Hz`;
  const voice = tone.effort === 'shout' ? 'shout' : `${tone.effort} voice`;
  return section(
    `Room tone${suffix}`,
    joinLines(
      wrapped(`${rangedText(tone.dBFS, 'dBFS')} RMS unweighted, ${filter}${judgedWords(asked)}`),
      tone.weightedDbFS !== null && wrapped(weightedWords(tone.weightedDbFS, asked)),
      wrapped(
        `At the capsule a ${voice} has ${formatNumber(tone.voiceAtCapsuleDbZ)} dB at ${formatFigures(tone.distanceM)} m, set to ${formatNumber(tone.voiceSetToDbFS)} dBFS; the noise has ${formatNumber(tone.noiseAtCapsuleDbZ)} dB${carriers(tone)}`,
      ),
      wrapped(`With other filters: ${filters(tone)}`),
      wrapped(
        style.detail === 'full'
          ? tone.note
          : `This assumes: ${tone.pattern} microphone, its own noise ${tone.selfNoiseDbZ === null ? 'not given' : 'counted'}, a steady ${tone.effort === 'shout' ? 'shout' : `${tone.effort} read`}; a softer read with more gain raises the figure dB for dB`,
      ),
    ),
    style,
  );
}

/** `; this is the figure that `require room-tone <= -62 dBFS` judges` */
function judgedWords(asked: readonly RequirementResult[]): string {
  return asked.length === 0 ? '' : `; this is the figure that ${names(asked)} judges`;
}

/** The other figure, and why it stands here: the two are easily mixed up. */
function weightedWords(level: number, asked: readonly RequirementResult[]): string {
  const use = asked.length === 0 ? 'no requirement in dBFS is stated' : `${names(asked)} does not look at it`;
  return `A-weighted the same noise would read ${formatNumber(level)} dBFS: only to compare with a meter or a demand that weights, ${use}`;
}

function names(asked: readonly RequirementResult[]): string {
  return asked.map(({ text }) => `\`${text}\``).join(' and ');
}

/** `; of its energy 78 % at 63 Hz, 18 % at 125 Hz` */
function carriers({ shares }: Tone): string {
  const parts = [
    ...shares.octaves.map((share, octave) => ({ share, at: `at ${bandName(octaveCentres[octave] ?? 0)} Hz` })),
    { share: shares.microphone, at: 'from the microphone' },
  ]
    .filter(({ share }) => share >= 0.1)
    .sort((a, b) => b.share - a.share)
    .slice(0, 3);
  return parts.length === 0
    ? ''
    : `; of its energy ${parts.map(({ share, at }) => `${shareText(share)} ${at}`).join(', ')}`;
}

function filters({ filters: all }: Tone): string {
  return all
    .map(
      ({ highPassHz, dBFS }) =>
        `${highPassHz === null ? 'none' : `${formatFigures(highPassHz)} Hz`} ${formatNumber(dBFS)}`,
    )
    .join(', ');
}
