import type { Problem } from '@boothwright/language';
import { lineAndColumn } from '../../text/line-and-column.js';
import { deadlyCautions, hazardText } from '../../text/sections/cautions.js';
import { headlineVerdict } from '../../text/sections/headline.js';
import { type Block, blocks, list, text } from '../blocks.js';
import type { ReportInput } from '../report-input.js';
import { inventedNotice } from './invented.js';

const mostProblems = 20;

/** What must be known before anything else is read: the verdict, errors of the text, hazards, invented data. */
export function frontBlocks(input: ReportInput): Block[] {
  const { result } = input;
  const stops = result.cautions.filter(({ severity }) => severity === 'stop');
  const deadly = deadlyCautions(result);
  const lost = result.unread.filter(({ part }) => part === 'require').length;
  return blocks(
    problemsNotice(input),
    {
      kind: 'notice',
      tone: headlineVerdict(result).startsWith('MET') && lost === 0 ? 'note' : 'care',
      title: headlineVerdict(result),
      blocks: blocks(
        lost > 0 &&
          text(
            lost === 1
              ? 'One requirement could not be read and is not among them.'
              : `${lost} requirements could not be read and are not among them.`,
          ),
        text(
          'Every figure here is a prediction with a range, not a measurement; none replaces local codes and licensed practice.',
        ),
      ),
    },
    stops.length > 0 && {
      kind: 'notice',
      tone: 'stop',
      title: 'Stop: to clear before anything is built',
      blocks: blocks(list(once(stops.map(({ hazard, ask }) => `${hazard}. ${ask}`)))),
    },
    deadly.length > 0 && {
      kind: 'notice',
      tone: 'stop',
      title: 'Hazards that can kill',
      blocks: blocks(
        list(once(deadly.map(hazardText))),
        text('Each is under Cautions, with the reason and whom to ask.'),
      ),
    },
    inventedNotice(input),
  );
}

/** Several booths may have the same hazard in the same words. */
const once = (lines: readonly string[]) => [...new Set(lines)];

/** Errors of the text first: what depends on them is missing below. */
function problemsNotice({ problems, texts, result }: ReportInput): Block | undefined {
  const errors = problems.filter(({ severity }) => severity === 'error');
  const empty = problems.filter(({ id }) => id === 'empty-file');
  const warnings = problems.filter(({ severity, id }) => severity === 'warning' && id !== 'empty-file');
  const grave = [...errors, ...empty.filter(({ severity }) => severity !== 'error')];
  if (grave.length + warnings.length === 0) return undefined;
  const shown = [...grave, ...warnings].slice(0, mostProblems);
  const more = grave.length + warnings.length - shown.length;
  const unread = result.unread.map(({ part, name }) => (name === null ? part : `${part} ${name}`));
  return {
    kind: 'notice',
    tone: grave.length > 0 ? 'stop' : 'care',
    title:
      grave.length > 0
        ? `The text has ${grave.length === 1 ? 'an error' : `${grave.length} errors`}: this report holds what could be understood, the rest is missing`
        : `${warnings.length === 1 ? 'A warning' : `${warnings.length} warnings`} about the text`,
    blocks: blocks(
      list([...shown.map((problem) => problemText(problem, texts)), more > 0 && `and ${more} more`]),
      unread.length > 0 &&
        text(`Not read, and nothing that depends on it is judged: ${[...new Set(unread)].join(', ')}.`),
    ),
  };
}

function problemText({ range, severity, id, message, hint }: Problem, texts: ReadonlyMap<string, string>): string {
  const found = texts.get(range.file);
  const at = found === undefined ? undefined : lineAndColumn(found, range.from);
  const place = at === undefined ? range.file : `${range.file}, line ${at.line}, column ${at.column}`;
  return `${place}: ${severity} \`${id}\`: ${message}${hint ? `; ${hint}` : ''}`;
}
