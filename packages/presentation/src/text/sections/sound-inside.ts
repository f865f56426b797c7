import type { BoothResult } from '@boothwright/assessment';
import { bandName, formatFrequency } from '../../numbers/format-frequency.js';
import { formatNumber } from '../../numbers/format-number.js';
import { atOctaveCentres, octaveCentres } from '../../numbers/octaves.js';
import { joinLines, section } from '../section.js';
import type { TextStyle } from '../text-style.js';
import { textTable } from '../text-table.js';
import { wrapText } from '../wrap-text.js';

const mostModes = 10;
/** The short report names those that ring longest. */
const mostInShort = 3;

const methodWords = { modes: 'modes', statistical: 'field', both: 'both', dry: 'dry', none: '–' } as const;
/** Seconds of the middle bands: below the first a voice is called dry here, above the second live. Our own words. */
const dryBelow = 0.15;
const liveAbove = 0.3;

/** How long sound rings, by octave, and where it comes from; the modes that a voice meets. */
export function soundInsideSection(booth: BoothResult, suffix: string, style: TextStyle): string | undefined {
  const { roomSound: sound } = booth;
  const line = (text: string) => wrapText(text, style.width, '  ', '    ');
  if (sound === null) {
    return section(
      `Sound inside${suffix}`,
      line('A face has no build-up: sound that leaves through it does not come back, so there is no decay to tell.'),
      style,
    );
  }
  const octave = atOctaveCentres(sound.decay.map((_, band) => band)).map((band) => sound.decay[band ?? 0]!);
  const time = (seconds: number | null) => (seconds === null ? '–' : formatNumber(seconds, 2));
  const right = (head: string) => ({ head, align: 'right' as const });
  return section(
    `Sound inside${suffix}, decay by 60 dB in s`,
    joinLines(
      textTable(
        [{ head: 'third octave at' }, ...octaveCentres.map((hz) => right(bandName(hz)))],
        [
          ['decay', ...octave.map(({ seconds }) => time(seconds))],
          ['from', ...octave.map(({ lowS }) => time(lowS))],
          ['to', ...octave.map(({ highS }) => time(highS))],
          ['by', ...octave.map(({ method }) => methodWords[method])],
        ],
      ),
      line(characterText(sound, style.detail)),
      ...(style.detail === 'full' ? fullLines(booth) : []).map(line),
    ),
    style,
  );
}

type Sound = NonNullable<BoothResult['roomSound']>;

export function characterText({ mid, ratio125, ratio250, modes }: Sound, detail: TextStyle['detail']): string {
  const dryness =
    mid === null
      ? 'The middle bands are not known'
      : mid.highS < dryBelow
        ? 'Dry in the middle bands'
        : mid.lowS > liveAbove
          ? 'Live in the middle bands'
          : 'Between dry and live in the middle bands';
  const times = (ratio: number | null, hz: string) =>
    ratio === null ? [] : [`${formatNumber(ratio, 1)} times at ${hz}`];
  const low = [...times(ratio125, '125 Hz'), ...times(ratio250, '250 Hz')];
  const onVoice = modes.filter((mode) => mode.onVoice.length > 0);
  const voiced =
    detail === 'full'
      ? onVoice.slice(0, mostModes)
      : onVoice
          .toSorted((a, b) => (b.decayS ?? 0) - (a.decayS ?? 0))
          .slice(0, mostInShort)
          .toSorted((a, b) => a.hz - b.hz);
  const list = voiced.map(
    ({ hz, decayS }) => `${formatNumber(hz)} Hz${decayS === null ? '' : ` (${formatNumber(decayS, 2)} s)`}`,
  );
  return `${dryness}${low.length > 0 ? `, the lows ${low.join(', ')}` : ''}.${list.length > 0 ? ` Modes on a voice${voiced.length < onVoice.length ? ' that ring longest' : ''}: ${list.join(', ')}.` : ''} Modes below the Schroeder frequency, statistics above it; people and what stands inside shift both.`;
}

function fullLines(booth: BoothResult): string[] {
  const { eyringS, sabineS, validFromHz } = booth.reverberation;
  const time = (seconds: number | null) => (seconds === null ? '–' : formatNumber(seconds, 2));
  const list = (values: readonly (number | null)[]) =>
    atOctaveCentres(values)
      .map((seconds, index) => `${bandName(octaveCentres[index]!)} ${time(seconds)}`)
      .join(', ');
  const modes = booth.modesHz.map(({ hz, order }) => `${formatNumber(hz)} (${order.join('-')})`).join(', ');
  return [
    `Statistics alone, from ${formatFrequency(validFromHz)} on: Eyring ${list(eyringS)}; Sabine ${list(sabineS)}`,
    `Modes of hard walls: ${modes} Hz (order along width-depth-height)`,
    ...(booth.roomSound?.assumes ?? []),
  ];
}
