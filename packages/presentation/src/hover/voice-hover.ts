import type { BoothResult, RequirementResult } from '@boothwright/assessment';
import { formatNumber } from '../numbers/format-number.js';
import { rangedText } from '../numbers/level-words.js';
import { requirementName, verdictText } from '../numbers/requirement-words.js';
import { bullets, code, escapeMarkdown, paragraphs, table } from './markdown.js';

/** Who hears the voice, and how loudly, at the effort of the session. Undefined where nobody is known who could. */
export function voiceHover(
  boothName: string,
  { voiceAt }: BoothResult,
  requirements: readonly RequirementResult[] = [],
): string | undefined {
  const places = voiceAt.filter(({ missing }) => missing.length === 0);
  if (places.length === 0) return undefined;
  const loudest = places.toSorted((a, b) => (b.session?.dBA?.value ?? 0) - (a.session?.dBA?.value ?? 0))[0];
  const effort = loudest?.session?.effort.replace('-', ' ');
  const limits = requirements.filter(
    ({ kind, booth }) => kind === 'voice-outside' && (booth === null || booth === boothName),
  );
  return paragraphs(
    loudest?.session &&
      `**Your voice (${effort}) outside ${escapeMarkdown(boothName)}: ${rangedText(loudest.session.dBA, 'dBA')}**, ${escapeMarkdown(loudest.title)}`,
    table(
      ['effort', 'at 1 m', ...places.map(({ title }) => escapeMarkdown(title))],
      (places[0]?.byEffort ?? []).map(({ effort: each, at1mDbA }, index) => [
        `${each.replace('-', ' ')}${each === loudest?.session?.effort ? ', yours' : ''}`,
        `${formatNumber(at1mDbA)} dBA`,
        ...places.map(({ byEffort }) => rangedText(byEffort[index]?.dBA ?? null, 'dBA')),
      ]),
    ),
    limits.length > 0 && bullets(limits.map((each) => `${code(requirementName(each))} ${verdictText(each)}`)),
    ...new Set(places.map(({ note }) => escapeMarkdown(note))),
  );
}
