import type { BoothResult } from '@boothwright/assessment';
import { bandName } from '../../numbers/format-frequency.js';
import { formatNumber } from '../../numbers/format-number.js';
import { bandLevel, totalsText } from '../../numbers/level-words.js';
import { octaveCentres, octaveLevels } from '../../numbers/octaves.js';
import { type Block, blocks, figureColumn, list, table, text } from '../blocks.js';

/** The voice in the room and at the neighbours, from casual to a full shout. */
export function voiceBlocks({ voiceAt, voiceOutside }: BoothResult, suffix: string): Block[] {
  const told = voiceAt.filter(({ byEffort }) => byEffort.length > 0);
  const [first] = told;
  if (first === undefined)
    return blocks(text('Not predicted: the text has no voice inside, or a face has no build-up.'));
  const yours = first.session?.effort;
  return blocks(
    table(
      `Voice outside${suffix} by effort, dBA, with its range`,
      [{ head: 'effort' }, figureColumn('at 1 m, no booth'), ...told.map(({ title }) => figureColumn(title))],
      first.byEffort.map(({ effort, at1mDbA }, index) => [
        `${words(effort)}${effort === yours ? ', of the session' : ''}`,
        formatNumber(at1mDbA),
        ...told.map(({ byEffort }) => {
          const dBA = byEffort[index]?.dBA ?? null;
          return dBA === null
            ? '–'
            : `${formatNumber(dBA.value)} (${formatNumber(dBA.low)} to ${formatNumber(dBA.high)})`;
        }),
      ]),
    ),
    table(
      `The voice of the session outside${suffix} by octave, dB`,
      [{ head: 'place' }, ...octaveCentres.map((hz) => figureColumn(bandName(hz)))],
      told.flatMap(({ title, session }) =>
        session === null ? [] : [[title, ...octaveLevels(session.byBand).map(bandLevel)]],
      ),
    ),
    list([
      ...told.flatMap(({ title, session }) =>
        session === null ? [] : [`${title}, ${words(session.effort)}: ${totalsText(session)}`],
      ),
      ...voiceAt
        .filter(({ missing }) => missing.length > 0)
        .map(({ title, missing }) => `${title}: not predicted, the text must say ${missing.join(' and ')}`),
      voiceOutside?.note,
      ...new Set(told.map(({ note }) => note)),
    ]),
  );
}

function words(effort: string): string {
  return effort === 'full-shout' ? 'full shout' : effort;
}
