import type { BoothResult, VoiceAt } from '@boothwright/assessment';
import { bandName } from '../../numbers/format-frequency.js';
import { formatNumber } from '../../numbers/format-number.js';
import { bandLevel, totalsText } from '../../numbers/level-words.js';
import { octaveCentres, octaveLevels } from '../../numbers/octaves.js';
import { printable } from '../printable.js';
import { joinLines, section } from '../section.js';
import type { TextStyle } from '../text-style.js';
import { textTable } from '../text-table.js';
import { wrapText } from '../wrap-text.js';

/** The voice outside the booth and at the neighbours, from casual to a full shout. */
export function getsOutSection(booth: BoothResult, suffix: string, style: TextStyle): string | undefined {
  const told = booth.voiceAt.filter(({ byEffort }) => byEffort.length > 0);
  const voice = booth.voiceOutside;
  if (told.length === 0) return undefined;
  const wrapped = (text: string) => wrapText(printable(text), style.width, '  ', '    ');
  const missing = booth.voiceAt.filter(({ missing: lacks }) => lacks.length > 0);
  return section(
    `What gets out${suffix}, dBA`,
    joinLines(
      effortTable(told),
      ...(style.detail === 'full'
        ? told.flatMap(({ title, session }) =>
            session === null ? [] : [wrapped(`${title}, ${effortWords(session.effort)}: ${totalsText(session)}`)],
          )
        : []),
      ...missing.map(({ title, missing: lacks }) =>
        wrapped(`${title}: not predicted, the text must say ${lacks.join(' and ')}`),
      ),
      style.detail === 'full' && voice && bandTable(told),
      style.detail === 'full' && voice?.note && wrapped(voice.note),
      wrapped(told[0]?.note ?? ''),
    ),
    style,
  );
}

function effortTable(places: readonly VoiceAt[]): string {
  const efforts = places[0]?.byEffort ?? [];
  const yours = places[0]?.session?.effort;
  return textTable(
    [
      { head: 'effort' },
      { head: 'at 1 m', align: 'right' },
      ...places.map(({ title }) => ({ head: printable(title), align: 'right' as const })),
    ],
    efforts.map(({ effort, at1mDbA }, index) => [
      `${effortWords(effort)}${effort === yours ? ', yours' : ''}`,
      formatNumber(at1mDbA),
      ...places.map(({ byEffort }) => {
        const dBA = byEffort[index]?.dBA ?? null;
        return dBA === null
          ? '–'
          : `${formatNumber(dBA.value)} (${formatNumber(dBA.low)} to ${formatNumber(dBA.high)})`;
      }),
    ]),
  );
}

function bandTable(places: readonly VoiceAt[]): string {
  return textTable(
    [{ head: 'octave bands, dB' }, ...octaveCentres.map((hz) => ({ head: bandName(hz), align: 'right' as const }))],
    places.flatMap(({ title, session }) =>
      session === null ? [] : [[printable(title), ...octaveLevels(session.byBand).map(bandLevel)]],
    ),
  );
}

function effortWords(effort: string): string {
  return effort === 'full-shout' ? 'full shout' : effort;
}
