import type { BoothResult, RequirementResult, RoomSoundResult } from '@boothwright/assessment';
import { chartDecay } from '../charts/chart-decay.js';
import { hoverSize } from '../charts/frame.js';
import { svgToMarkdownImage } from '../charts/svg-to-markdown-image.js';
import { decayLimits } from '../numbers/decay-limits.js';
import { bandName, formatFrequency } from '../numbers/format-frequency.js';
import { formatNumber } from '../numbers/format-number.js';
import { atOctaveCentres, octaveCentres } from '../numbers/octaves.js';
import { bullets, escapeMarkdown, paragraphs, table } from './markdown.js';

const methodWords = { modes: 'modes', statistical: 'field', both: 'both', dry: 'dry field', none: '–' } as const;
const mostModes = 6;

/** How long the voice rings inside: the middle bands, how much longer the lows, which modes meet a voice. */
export function roomSoundHover(
  boothName: string,
  booth: BoothResult,
  requirements: readonly RequirementResult[] = [],
): string {
  const { roomSound: sound } = booth;
  const name = escapeMarkdown(boothName);
  if (sound === null) {
    return `**No decay to tell** in ${name}: a face has no build-up, and sound that leaves through it does not come back`;
  }
  const octaves = atOctaveCentres(sound.decay);
  const headline = headlineOf(sound);
  const limits = decayLimits(boothName, requirements);
  const svg = chartDecay({
    title: `Decay in ${boothName}`,
    description: plain(headline),
    decay: sound.decay,
    limits,
  });
  return paragraphs(
    `${headline} in ${name}`,
    svgToMarkdownImage(svg, `Decay in ${boothName}. ${plain(headline)}`, hoverSize),
    table(
      ['third octave at', ...octaveCentres.map(bandName)],
      [
        ['decay by 60 dB, s', ...octaves.map(({ seconds }) => time(seconds))],
        ['from', ...octaves.map(({ lowS }) => time(lowS))],
        ['to', ...octaves.map(({ highS }) => time(highS))],
        ['by', ...octaves.map(({ method }) => methodWords[method])],
      ],
    ),
    modesLine(sound),
    gapsLine(sound),
    `Single modes below, an even field above the Schroeder frequency, ${formatFrequency(booth.schroederHz)}; people and what stands inside shift both. Assumed:`,
    bullets(sound.assumes.map(escapeMarkdown)),
  );
}

function headlineOf({ mid, ratio125, ratio250 }: RoomSoundResult): string {
  const times = [
    ...(ratio125 === null ? [] : [`125 Hz rings ${formatNumber(ratio125, 1)} times as long`]),
    ...(ratio250 === null ? [] : [`250 Hz ${ratio125 === null ? 'rings ' : ''}${formatNumber(ratio250, 1)} times`]),
  ].join(', ');
  if (mid === null) return '**Decay of the middle bands not known**';
  return `**Decay ${time(mid.seconds)} s** (${time(mid.lowS)} to ${time(mid.highS)}) from 500 Hz to 2 kHz${times ? `; ${times}` : ''}`;
}

function modesLine({ modes }: RoomSoundResult): string | undefined {
  const voiced = modes.filter(({ onVoice }) => onVoice.length > 0);
  if (voiced.length === 0) return undefined;
  const list = voiced
    .slice(0, mostModes)
    .map(({ hz, decayS }) => `${formatNumber(hz)} Hz${decayS === null ? '' : ` (${time(decayS)} s)`}`);
  const more = voiced.length - list.length;
  return `Modes on a voice: ${list.join(', ')}${more > 0 ? ` and ${more} more` : ''}`;
}

function gapsLine({ gaps }: RoomSoundResult): string | undefined {
  if (gaps.length === 0) return undefined;
  const spans = gaps.map(({ fromHz, toHz }) => `${formatNumber(fromHz)} to ${formatNumber(toHz)} Hz`);
  return `No mode from ${spans.join(', ')}: a note there is carried less than its neighbours`;
}

const plain = (text: string) => text.replaceAll('*', '');
const time = (seconds: number | null) => (seconds === null ? '–' : formatNumber(seconds, 2));
