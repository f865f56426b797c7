import type { BoothResult, RequirementResult } from '@boothwright/assessment';
import { chartCo2 } from '../charts/chart-co2.js';
import { hoverSize } from '../charts/frame.js';
import { svgToMarkdownImage } from '../charts/svg-to-markdown-image.js';
import { airSentences } from '../numbers/air-words.js';
import { bandName, formatFrequency } from '../numbers/format-frequency.js';
import { formatNumber } from '../numbers/format-number.js';
import { formatQuantity } from '../numbers/format-quantity.js';
import { bandLevel, rangedText, totalsText } from '../numbers/level-words.js';
import { atOctaveCentres, octaveCentres, octaveLevels, octaveLoss } from '../numbers/octaves.js';
import { requirementName, verdictText } from '../numbers/requirement-words.js';
import { isImperial } from '../numbers/shown.js';
import { areaText, roomLengthText, volumeText } from '../numbers/trade-units.js';
import type { HoverContext } from './hover-context.js';
import { bullets, code, escapeMarkdown, paragraphs, table } from './markdown.js';

export interface BoothHoverContext extends HoverContext {
  readonly requirements?: readonly RequirementResult[];
}

/** What one booth keeps out, how quiet, how long the air lasts, what it weighs. */
export function boothHover(name: string, booth: BoothResult, context: BoothHoverContext): string {
  const { geometry, build, noise, ratings, voiceOutside } = booth;
  const size = (metres: readonly number[]) =>
    isImperial()
      ? metres.map((metre) => roomLengthText(metre)).join(' × ')
      : `${metres.map((metre) => formatNumber(metre, 2)).join(' × ')} m`;
  const requirements = (context.requirements ?? []).filter(({ booth: of }) => of === name || of === null);
  return paragraphs(
    `**${escapeMarkdown(name)}**${booth.title ? ` ${escapeMarkdown(booth.title)}` : ''}`,
    `All surfaces and openings together: STC ${ratings.stc}, Rw ${ratings.rw} · noise inside ${totalsText(noise.total)}` +
      (noise.roomTone ? ` · room tone ${rangedText(noise.roomTone.dBFS, 'dBFS')}` : ''),
    requirements.length > 0 &&
      bullets(requirements.map((requirement) => `${code(requirementName(requirement))} ${verdictText(requirement)}`)),
    table(
      ['octaves, dB', ...octaveCentres.map(bandName)],
      [
        ['kept out', ...octaveLoss(booth.compositeTransmissionLossDb).map(bandLevel)],
        ['noise inside', ...octaveLevels(noise.total.byBand).map(bandLevel)],
        ['decay, s', ...decayOf(booth).map(seconds)],
      ],
    ),
    voiceOutside &&
      `Voice (${escapeMarkdown(voiceOutside.effort)}) outside, ${escapeMarkdown(voiceOutside.where)}: ${totalsText(voiceOutside)}`,
    neighboursLine(booth),
    noise.hours && hoursLine(noise.hours),
    `Inside ${size(geometry.insideM)} (usable ${size(geometry.usableM)}), ${volumeText(geometry.volumeM3)} · first mode ${formatFrequency(booth.firstModeHz)} · statistical above ${formatFrequency(booth.schroederHz)}`,
    `${formatQuantity(build.massKg, 'kg')} empty, ${formatQuantity(build.loadedMassKg, 'kg')} in use, ${formatQuantity(build.floorLoadPa, 'Pa')} on ${areaText(build.footprintM2)}` +
      (build.cost
        ? ` · ${formatNumber(build.cost.amount)} ${build.cost.currency}, ${formatNumber(build.cost.withReserve)} with reserve`
        : ''),
    booth.air && airPicture(name, booth.air, requirements),
  );
}

/** The voice at every neighbour, at the effort of the session. */
function neighboursLine({ voiceAt }: BoothResult): string | undefined {
  const places = voiceAt.filter(({ place, session }) => place !== null && session !== null);
  if (places.length === 0) return undefined;
  return places
    .map(({ title, session }) => `${escapeMarkdown(title)}: ${rangedText(session?.dBA ?? null, 'dBA')}`)
    .join(' · ');
}

function hoursLine({ requirements, session }: NonNullable<BoothResult['noise']['hours']>): string | undefined {
  const words = [...requirements.map((each) => each.words), ...(session === null ? [] : [session.words])];
  return words.length === 0 ? undefined : escapeMarkdown(words.join('; '));
}

function decayOf({ roomSound }: BoothResult): readonly (number | null)[] {
  return roomSound === null
    ? octaveCentres.map(() => null)
    : atOctaveCentres(roomSound.decay).map(({ seconds: time }) => time);
}

function seconds(time: number | null): string {
  return time === null ? '–' : formatNumber(time, 2);
}

function airPicture(
  name: string,
  air: NonNullable<BoothResult['air']>,
  requirements: readonly RequirementResult[],
): string {
  const limit = requirements.find(({ kind }) => kind === 'co2')?.limit;
  const sentences = airSentences(air);
  const svg = chartCo2({
    title: `CO₂ in ${name}`,
    description: sentences.join('; '),
    air,
    ...(limit === undefined ? {} : { limitPpm: limit }),
  });
  return paragraphs(
    escapeMarkdown(sentences.find((sentence) => sentence.startsWith(`fan ${air.judged}`)) ?? sentences[0] ?? ''),
    svgToMarkdownImage(svg, `CO₂ in ${name}. ${sentences.join('; ')}`, hoverSize),
  );
}
