import type { BoothResult, RequirementResult, ResultDocument } from '@boothwright/assessment';
import { chartDecay } from '../../charts/chart-decay.js';
import { chartResponse } from '../../charts/chart-response.js';
import { bandName, formatFrequency } from '../../numbers/format-frequency.js';
import { formatNumber } from '../../numbers/format-number.js';
import { characterText } from '../../text/sections/sound-inside.js';
import { type Block, blocks, figureColumn, heading, list, table, text } from '../blocks.js';
import { type Figures, reportChart, withTable } from '../figures.js';

const methods = {
  modes: 'single modes',
  statistical: 'even field',
  both: 'both',
  dry: 'dry field',
  none: 'not known',
} as const;
/** Of the curve from mouth to microphone one row for each of these steps suffices. */
const responseStep = 1 / 6;

/** How it sounds inside: decay by band with the model that speaks, modes on a voice, reflections at the microphone. */
export function insideBlocks(
  name: string,
  booth: BoothResult,
  { requirements }: ResultDocument,
  suffix: string,
  figures: Figures,
): Block[] {
  const { roomSound, reflections, reflectionsWhy } = booth;
  return blocks(
    heading(`Sound inside${suffix}`),
    roomSound === null
      ? text('A face has no build-up: sound that leaves through it does not come back, so there is no decay to tell.')
      : text(characterText(roomSound, 'full')),
    roomSound && decayFigure(name, roomSound, requirements, figures),
    reflections === null && text(reflectionsWhy && `Reflections at the microphone are not told: ${reflectionsWhy}.`),
    reflections && reflectionBlocks(name, reflections, figures),
  );
}

function decayFigure(
  name: string,
  { decay }: NonNullable<BoothResult['roomSound']>,
  requirements: readonly RequirementResult[],
  figures: Figures,
): Block[] {
  const caption = `Decay by 60 dB in ${name} by third octave`;
  const time = (seconds: number | null) => (seconds === null ? '–' : formatNumber(seconds, 2));
  const asked = requirements.filter(
    ({ kind, booth }) => kind === 'reverberation' && (booth === null || booth === name),
  );
  return withTable(
    figures,
    chartDecay({
      title: caption,
      description: decay.map(({ hz, seconds }) => `${bandName(hz)} Hz ${time(seconds)} s`).join(', '),
      decay,
      size: reportChart,
    }),
    `${caption}${asked.length > 0 ? `; asked: ${asked.map((each) => each.text.replace(/^require\s+/, '')).join(', ')}` : ''}`,
    table(
      caption,
      [
        figureColumn('Hz'),
        figureColumn('s'),
        figureColumn('from'),
        figureColumn('to'),
        { head: 'found by' },
        { head: 'note' },
      ],
      decay.map(({ hz, seconds, lowS, highS, method, note }) => [
        bandName(hz),
        time(seconds),
        time(lowS),
        time(highS),
        methods[method],
        note,
      ]),
    ),
  );
}

function reflectionBlocks(
  name: string,
  { early, response, best, loudspeakers, mouthStated }: NonNullable<BoothResult['reflections']>,
  figures: Figures,
): Block[] {
  const caption = `From the mouth to the microphone in ${name}, re the direct sound`;
  return blocks(
    table(
      `Early reflections at the microphone in ${name}`,
      [
        { head: 'from' },
        figureColumn('level, dB'),
        figureColumn('later by, ms'),
        figureColumn('first hole'),
        { head: 'ripple' },
        { head: 'what to do' },
      ],
      early
        .filter((each) => each.strong)
        .map(({ name: from, levelDb, delayMs, firstNullHz, peakDb, dipDb, todo }) => [
          from,
          formatNumber(levelDb),
          formatNumber(delayMs, 1),
          formatFrequency(firstNullHz),
          dipDb === null ? 'cancels it' : `+${formatNumber(peakDb, 1)} to ${formatNumber(dipDb, 1)} dB`,
          todo,
        ]),
    ),
    list([
      !mouthStated && 'The mouth is assumed at the distance of the microphone; `mouth at` says where it is',
      response &&
        `Ups and downs from 60 to 300 Hz: ${formatNumber(response.spreadDb, 1)} dB${best === null ? '' : `; ${best.text}`}`,
      ...loudspeakers.map((each) => each.text),
    ]),
    response &&
      withTable(
        figures,
        chartResponse({
          title: caption,
          description: `Spread ${formatNumber(response.spreadDb, 1)} dB, deepest ${formatNumber(response.deepest.levelDb)} dB at ${formatFrequency(response.deepest.hz)}, highest ${formatNumber(response.highest.levelDb)} dB at ${formatFrequency(response.highest.hz)}`,
          hz: response.hz,
          levelDb: response.levelDb,
          size: reportChart,
        }),
        caption,
        table(
          `${caption}, at steps of a sixth of an octave`,
          [figureColumn('Hz'), figureColumn('dB')],
          thinned(response).map(({ hz, levelDb }) => [formatNumber(hz), formatNumber(levelDb, 1)]),
        ),
      ),
  );
}

function thinned({ hz, levelDb }: { readonly hz: readonly number[]; readonly levelDb: readonly number[] }) {
  const kept: { hz: number; levelDb: number }[] = [];
  for (const [index, at] of hz.entries()) {
    const last = kept.at(-1);
    if (last === undefined || Math.log2(at / last.hz) >= responseStep - 1e-9)
      kept.push({ hz: at, levelDb: levelDb[index] ?? Number.NaN });
  }
  return kept;
}
