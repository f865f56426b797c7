import type { BoothResult, HoursResult, Verdict } from '@boothwright/assessment';
import { chartHours } from '../charts/chart-hours.js';
import { hoverSize } from '../charts/frame.js';
import { svgToMarkdownImage } from '../charts/svg-to-markdown-image.js';
import { rangedText } from '../numbers/level-words.js';
import { requirementName } from '../numbers/requirement-words.js';
import { code, escapeMarkdown, paragraphs, textTable } from './markdown.js';

const verdictWords: Readonly<Record<Verdict, string>> = {
  met: 'met',
  missed: 'missed',
  'not-assessed': 'not assessed',
};

/** Which hours are quiet enough. Undefined where no source has hours. */
export function hoursHover(boothName: string, { noise }: BoothResult): string | undefined {
  const { hours } = noise;
  if (hours === null) return undefined;
  const words = [...hours.requirements.map((each) => each.words), ...(hours.session ? [hours.session.words] : [])];
  const headline = words.length === 0 ? 'Noise inside around the clock' : words.join('; ');
  const svg = chartHours({ title: `Noise in ${boothName} by the hour`, description: headline, hours });
  return paragraphs(
    `**${escapeMarkdown(headline)}** in ${escapeMarkdown(boothName)}`,
    svgToMarkdownImage(svg, `Noise in ${boothName} by the hour. ${headline}`, hoverSize),
    textTable(
      [
        'when',
        'what is heard',
        'inside',
        '',
        ...hours.requirements.map(({ text }) => code(requirementName({ text } as never))),
      ],
      hours.states.map((state, index) => [
        spans(hours, index),
        state.sources.map(escapeMarkdown).join(', ') || 'nothing',
        rangedText(state.dBA, 'dBA'),
        state.nc ?? '',
        ...state.verdicts.map((verdict) => verdictWords[verdict]),
      ]),
    ),
    hours.states.some(({ notPredicted }) => notPredicted.length > 0) &&
      `Not in it: ${[...new Set(hours.states.flatMap(({ notPredicted }) => notPredicted))].map(escapeMarkdown).join(', ')}, which come through the structure`,
  );
}

/** `09:00 to 12:00`: the hours of one state; a stretch across midnight is one. */
function spans({ stateOfHour }: HoursResult, state: number): string {
  if (stateOfHour.every((each) => each === state)) return 'all day';
  const starts = stateOfHour.flatMap((each, hour) =>
    each === state && stateOfHour.at(hour - 1) !== state ? [hour] : [],
  );
  return starts
    .map((start) => {
      let end = start;
      while (stateOfHour[end % 24] === state) end += 1;
      return `${clock(start)} to ${clock(end % 24)}`;
    })
    .join(', ');
}

const clock = (hour: number) => `${String(hour).padStart(2, '0')}:00`;
