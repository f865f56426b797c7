import type { BoothResult } from '@boothwright/assessment';
import { formatNumber } from '../numbers/format-number.js';
import { rangedText } from '../numbers/level-words.js';
import { escapeMarkdown, paragraphs, table } from './markdown.js';

/** The voice of a booth at a neighbour, by effort. Undefined when the booth knows no such neighbour. */
export function neighbourHover(neighbour: string, boothName: string, booth: BoothResult): string | undefined {
  const place = booth.voiceAt.find((each) => each.place === neighbour);
  if (place === undefined) return undefined;
  const head = `**${escapeMarkdown(neighbour)}** hears the voice in ${escapeMarkdown(boothName)}`;
  if (place.missing.length > 0) {
    return paragraphs(head, `Not predicted: the text must say ${escapeMarkdown(place.missing.join(' and '))}`);
  }
  return paragraphs(
    head,
    table(
      ['effort', 'at 1 m', 'there'],
      place.byEffort.map(({ effort, at1mDbA, dBA }) => [
        `${effort.replace('-', ' ')}${effort === place.session?.effort ? ', yours' : ''}`,
        `${formatNumber(at1mDbA)} dBA`,
        rangedText(dBA, 'dBA'),
      ]),
    ),
    escapeMarkdown(place.note),
  );
}
