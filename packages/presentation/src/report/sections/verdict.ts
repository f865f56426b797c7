import type { BoothResult, RequirementResult, ResultDocument } from '@boothwright/assessment';
import { formatNumber } from '../../numbers/format-number.js';
import { rangedText, totalsText } from '../../numbers/level-words.js';
import { limiterWords } from '../../numbers/path-words.js';
import { limitText, rangeText, requirementName, valueText, verdictText } from '../../numbers/requirement-words.js';
import { ofBooth } from '../../text/section.js';
import { adviceOf } from '../../text/sections/change-first.js';
import { inShortLines } from '../../text/sections/in-short.js';
import { marginText, sharedReasons } from '../../text/sections/requirements.js';
import {
  type Block,
  blocks,
  type Cell,
  facts,
  figureColumn,
  heading,
  list,
  type ReportSection,
  table,
  text,
} from '../blocks.js';
import type { ReportInput } from '../report-input.js';

const verdictCells: Readonly<Record<RequirementResult['verdict'], Cell>> = {
  met: { text: 'met', tone: 'good' },
  missed: { text: 'MISSED', tone: 'bad' },
  'not-assessed': { text: 'not assessed', tone: 'open' },
};

/** What is asked, what is predicted, what fails and why, what to change first; then the figures that a studio asks for. */
export function verdictSection({ result }: ReportInput): ReportSection {
  const advice = adviceOf(result);
  return {
    id: 'verdict',
    title: 'Verdict',
    lead: 'For the engineer at the other end: what the recordings will have, and what they will not.',
    blocks: blocks(
      requirementsTable(result),
      result.requirements.some(({ withinRange }) => withinRange) &&
        text('~ the limit lies within the range of the prediction: less certain than the rest.'),
      ...whyBlocks(result),
      inShort(result),
      advice.length > 0 && heading('What to change first'),
      list(
        advice.map(({ what, how }) => (how ? `${what} → ${how}` : what)),
        true,
      ),
      ...Object.entries(result.booths).flatMap(([name, booth]) => [
        heading(`In numbers${ofBooth(name, Object.keys(result.booths).length)}`),
        ...blocks(numbers(booth)),
      ]),
      Object.keys(result.booths).length === 0 && text('The text holds no booth that could be worked out.'),
    ),
  };
}

function requirementsTable({ requirements, booths }: ResultDocument): Block | undefined {
  const count = Object.keys(booths).length;
  return table(
    'Requirements and what the prediction says',
    [
      { head: 'requirement' },
      { head: 'verdict' },
      figureColumn('predicted'),
      figureColumn('range'),
      figureColumn('limit'),
      figureColumn('margin'),
      { head: 'limited by' },
    ],
    requirements.map((requirement) => [
      requirementName(requirement) + (requirement.booth ? ofBooth(requirement.booth, count) : ''),
      verdictCells[requirement.verdict],
      valueText(requirement),
      rangeText(requirement) ?? '',
      limitText(requirement),
      marginText(requirement),
      requirement.limitedBy === null ? '' : limiterWords(requirement.limitedBy),
    ]),
  );
}

function whyBlocks({ requirements }: ResultDocument): Block[] {
  const open = requirements.filter(({ verdict }) => verdict !== 'met');
  if (open.length === 0) return [];
  return blocks(
    heading('What is not met, and why'),
    list(
      sharedReasons(open).map((group) => {
        const [first] = group as [RequirementResult];
        const names =
          group.length > 3
            ? `All ${group.length} that depend on it`
            : group.map((each) => requirementName(each)).join(', ');
        return `${names}: ${verdictText(first)}. ${first.explanation.replace(/\.$/, '')}.`;
      }),
    ),
  );
}

function inShort(result: ResultDocument): Block[] {
  const lines = inShortLines(result);
  return lines.length === 0 ? [] : blocks(heading('In short'), list(lines));
}

function numbers(booth: BoothResult): Block | undefined {
  const { noise, ratings, roomSound } = booth;
  const tone = noise.roomTone;
  const mid = roomSound?.mid;
  return facts([
    ['Noise at the microphone', `${totalsText(noise.total)}, all that is predicted together`],
    [
      'Room tone in the file',
      tone
        ? `${rangedText(tone.dBFS, 'dBFS')} RMS unweighted, ${tone.effort} voice at ${formatNumber(tone.distanceM * 1000)} mm set to ${formatNumber(tone.voiceSetToDbFS)} dBFS, ${tone.highPassHz === null ? 'no high-pass' : `high-pass ${formatNumber(tone.highPassHz)} Hz`}${tone.weightedDbFS === null ? '' : `; A-weighted it would read ${formatNumber(tone.weightedDbFS)} dBFS`}`
        : 'not predicted: the text places no microphone with a voice before it',
    ],
    [
      'Decay, 500 Hz to 2 kHz',
      mid
        ? `${formatNumber(mid.seconds, 2)} s (${formatNumber(mid.lowS, 2)} to ${formatNumber(mid.highS, 2)})${ratioWords(roomSound)}`
        : 'not known',
    ],
    [
      'Kept out, all surfaces and openings',
      `STC ${ratings.stc}${ratings.stcGovernedBy === 'single-band' ? ' (set by a single band)' : ''}, Rw ${ratings.rw} (C ${formatNumber(ratings.c)}, Ctr ${formatNumber(ratings.ctr)}; C50-5000 ${formatNumber(ratings.c50To5000)}, Ctr50-5000 ${formatNumber(ratings.ctr50To5000)})`,
    ],
    [
      'Not predicted',
      noise.notPredicted.length > 0 && noise.notPredicted.map(({ name, why }) => `${name}: ${why}`).join('; '),
    ],
  ]);
}

function ratioWords({ ratio125, ratio250 }: NonNullable<BoothResult['roomSound']>): string {
  const words = [
    ...(ratio125 === null ? [] : [`125 Hz rings ${formatNumber(ratio125, 1)} times as long`]),
    ...(ratio250 === null ? [] : [`250 Hz ${formatNumber(ratio250, 1)} times`]),
  ];
  return words.length === 0 ? '' : `; ${words.join(', ')}`;
}
