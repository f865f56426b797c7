import type { BoothResult, EarlyReflectionResult, ReflectionsResult } from '@boothwright/assessment';
import { chartResponse } from '../charts/chart-response.js';
import { hoverSize } from '../charts/frame.js';
import { svgToMarkdownImage } from '../charts/svg-to-markdown-image.js';
import { formatFrequency } from '../numbers/format-frequency.js';
import { formatNumber } from '../numbers/format-number.js';
import { bullets, escapeMarkdown, paragraphs, table } from './markdown.js';

const mostReflections = 6;

/** What the booth does to the voice between mouth and microphone: ups and downs, reflections, a better place. */
export function mouthHover(boothName: string, booth: BoothResult): string {
  const { reflections, reflectionsWhy } = booth;
  const name = escapeMarkdown(boothName);
  if (reflections === null) {
    return `**Not known** what colours the voice in ${name}${reflectionsWhy ? `: ${escapeMarkdown(reflectionsWhy)}` : ''}`;
  }
  const { early, response, responseWhy, best, loudspeakers, leavesOut, mouthStated } = reflections;
  const headline = headlineOf(reflections);
  return paragraphs(
    `${headline} in ${name}`,
    response === null
      ? responseWhy && escapeMarkdown(responseWhy)
      : svgToMarkdownImage(
          chartResponse({
            title: `From the mouth to the microphone in ${boothName}`,
            description: headline.replaceAll('*', ''),
            hz: response.hz,
            levelDb: response.levelDb,
          }),
          `From the mouth to the microphone in ${boothName}. ${headline.replaceAll('*', '')}`,
          hoverSize,
        ),
    response &&
      `Deepest ${formatNumber(response.deepest.levelDb, 1)} dB at ${formatFrequency(response.deepest.hz)}, highest ${signed(response.highest.levelDb)} dB at ${formatFrequency(response.highest.hz)}`,
    best && `A better place: ${escapeMarkdown(best.text)}`,
    early.length > 0 &&
      table(
        ['early reflection', 'level', 'after', 'first hole', 'ups and downs', 'to do'],
        early.slice(0, mostReflections).map(reflectionRow),
      ),
    early.length > mostReflections && `and ${early.length - mostReflections} weaker`,
    ...loudspeakers.map(({ text }) => escapeMarkdown(text)),
    `Levels against the direct sound over ${formatNumber(reflections.directM, 2)} m${mouthStated ? '' : '; the mouth is assumed at the distance of the mic, `mouth at` says where it is'}. Not in it:`,
    bullets(leavesOut.map(escapeMarkdown)),
  );
}

function headlineOf({ response, early, limitDb }: ReflectionsResult): string {
  const strong = early.filter((each) => each.strong).length;
  const reflections =
    strong === 0
      ? `no early reflection above ${formatNumber(limitDb)} dB`
      : `**${strong} early ${strong === 1 ? 'reflection' : 'reflections'}** above ${formatNumber(limitDb)} dB`;
  return response === null
    ? reflections
    : `**Ups and downs ${formatNumber(response.spreadDb, 1)} dB** from 60 to 300 Hz · ${reflections}`;
}

function reflectionRow(each: EarlyReflectionResult): string[] {
  return [
    escapeMarkdown(each.name),
    `${each.strong ? '**' : ''}${formatNumber(each.levelDb)} dB${each.strong ? '**' : ''}`,
    `${formatNumber(each.delayMs, 1)} ms`,
    formatFrequency(each.firstNullHz),
    rippleText(each),
    escapeMarkdown(each.todo),
  ];
}

/**
 * What one thing sends back to the microphone; a thing goes by its title where it has one, a door or window by kind and
 * name. Undefined for a thing that sends nothing back within 10 ms.
 */
export function reflectionHover(name: string, booth: BoothResult, title = name): string | undefined {
  const { reflections } = booth;
  const found = reflections?.early.find(
    (each) => each.kind !== 'face' && each.name === (each.kind === 'equipment' ? title : `${each.kind} ${name}`),
  );
  if (!reflections || found === undefined) return undefined;
  const { covered } = found;
  return paragraphs(
    `**Sends the voice back at ${formatNumber(found.levelDb)} dB** re the direct sound, ${formatNumber(found.delayMs, 1)} ms later: ${
      found.strong ? '**strong**' : 'weak'
    } (from ${formatNumber(reflections.limitDb)} dB on it colours)`,
    `${rippleText(found)} dB of ups and downs at the mic, first hole at ${formatFrequency(found.firstNullHz)}`,
    found.todo !== 'nothing' && `To do: ${escapeMarkdown(found.todo)}`,
    covered && `With an absorber before it ${formatNumber(covered.levelDb)} dB`,
  );
}

function rippleText({ peakDb, dipDb }: Pick<EarlyReflectionResult, 'peakDb' | 'dipDb'>): string {
  return dipDb === null ? 'cancels it' : `${signed(peakDb)} / ${formatNumber(dipDb, 1)}`;
}

const signed = (dB: number) => `${dB >= 0 ? '+' : ''}${formatNumber(dB, 1)}`;
