import type { BoothResult, RequirementResult } from '@boothwright/assessment';
import { formatNumber } from '../numbers/format-number.js';
import { rangedText } from '../numbers/level-words.js';
import { requirementName, verdictText } from '../numbers/requirement-words.js';
import { bullets, code, escapeMarkdown, paragraphs, table } from './markdown.js';

/** The voice of a booth at a neighbour, by effort. Undefined when the booth knows no such neighbour. */
export function neighbourHover(
  neighbour: string,
  boothName: string,
  booth: BoothResult,
  requirements: readonly RequirementResult[] = [],
): string | undefined {
  const place = booth.voiceAt.find((each) => each.place === neighbour);
  if (place === undefined) return undefined;
  const head = `**${escapeMarkdown(neighbour)}** hears the voice in ${escapeMarkdown(boothName)}`;
  if (place.missing.length > 0) {
    return paragraphs(head, `Not predicted: the text must say ${escapeMarkdown(place.missing.join(' and '))}`);
  }
  const asked = requirements.filter(
    ({ kind, text, booth: of }) =>
      kind === 'voice-outside' && (of === null || of === boothName) && text.trimEnd().endsWith(` in ${neighbour}`),
  );
  return paragraphs(
    place.session === null
      ? head
      : `${head} at **${rangedText(place.session.dBA, 'dBA')}** (${place.session.effort.replace('-', ' ')})`,
    asked.length > 0 && bullets(asked.map((each) => `${code(requirementName(each))} ${verdictText(each)}`)),
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
