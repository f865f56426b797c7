import type { RoomMode } from '@boothwright/assessment';
import { chartModes, modeLooks } from '../../charts/chart-modes.js';
import { chartResponse } from '../../charts/chart-response.js';
import { palette } from '../../charts/palette.js';
import { formatFrequency } from '../../numbers/format-frequency.js';
import { formatNumber } from '../../numbers/format-number.js';
import { figureHtml, figures, type KeyEntry, pointsHtml } from '../sheet-html.js';
import type { SheetInput } from '../sheet-input.js';
import { newMarks, type SheetSection } from '../sheet-section.js';

/** Of the curve from mouth to microphone one row for each of these steps suffices, octaves. */
const rowStep = 1 / 12;
const voices = { 'low-voice': 'low voice', 'high-voice': 'high voice' } as const;

/** The modes of the box, and what they and the reflections make of the voice on its way to the microphone. */
export function modesSection({ name, booth, spec, size }: SheetInput): SheetSection | undefined {
  const { roomSound, reflections, reflectionsWhy } = booth;
  if (roomSound === null && reflections === null) return undefined;
  const marks = newMarks();
  const response = reflections?.response ?? null;
  const onVoice = roomSound?.modes.filter((mode) => mode.onVoice.length > 0).length ?? 0;
  return {
    id: 'modes',
    title: 'Modes and response',
    summary: [
      roomSound && `${onVoice} of ${roomSound.modes.length} modes on a voice`,
      response && `± ${formatNumber(response.spreadDb, 1)} dB at the mic`,
    ]
      .filter(Boolean)
      .join(' · '),
    html:
      modesFigure() +
      responseFigure() +
      pointsHtml([
        reflections === null && reflectionsWhy && `Reflections at the microphone are not told: ${reflectionsWhy}`,
        reflections?.best?.text,
        reflections?.responseWhy && `The response is not told: ${reflections.responseWhy}`,
        ...(roomSound?.gaps ?? []).map(
          ({ fromHz, toHz }) =>
            `No mode from ${formatNumber(fromHz)} to ${formatNumber(toHz)} Hz: a note there is carried less than its neighbours`,
        ),
      ]),
    marks: marks.ranges,
  };

  function modesFigure(): string {
    if (roomSound === null) return '';
    const mark = marks.of(roomSound.range);
    const key: KeyEntry[] = [
      { label: 'a voice meets it', ...modeLooks.onVoice, mark },
      { label: 'no voice does', ...modeLooks.other },
      ...(roomSound.gaps.length > 0 ? [{ label: 'no mode', colour: modeLooks.gap.colour, area: true as const }] : []),
    ];
    const svg = chartModes({
      title: `Modes of ${name} up to 300 Hz and how long they ring`,
      description: `${roomSound.modes.length} modes, ${onVoice} of them on a voice`,
      modes: roomSound.modes,
      gaps: roomSound.gaps,
      size,
    });
    return figureHtml(svg, key, {
      caption: `Modes of ${name} up to 300 Hz`,
      columns: [...figures('Hz'), { head: 'order' }, ...figures('decay, s', 'from', 'to'), { head: 'meets' }],
      rows: roomSound.modes.map(modeRow),
    });
  }

  function responseFigure(): string {
    if (response === null || reflections === null) return '';
    const mark = marks.of(spec?.microphone?.range ?? booth.range);
    const svg = chartResponse({
      title: `From the mouth to the microphone in ${name}, re the direct sound`,
      description: `Deepest ${formatNumber(response.deepest.levelDb)} dB at ${formatFrequency(response.deepest.hz)}, highest ${formatNumber(response.highest.levelDb)} dB at ${formatFrequency(response.highest.hz)}`,
      hz: response.hz,
      levelDb: response.levelDb,
      size,
    });
    const strongest = reflections.early.filter(({ strong }) => strong).slice(0, 3);
    return figureHtml(
      svg,
      [
        { label: 'at the microphone', colour: palette.blue, mark },
        { label: 'the voice alone', colour: palette.grey, dash: '7 3' },
        ...strongest.map(({ name: from, levelDb, range }) => ({
          label: `echo from ${from}`,
          figure: `${formatNumber(levelDb)} dB`,
          colour: 'none',
          mark: marks.of(range),
        })),
      ],
      {
        caption: 'From the mouth to the microphone, re the direct sound, at steps of a twelfth of an octave',
        columns: figures('Hz', 'dB'),
        rows: thinned(response).map(({ hz, levelDb }) => [formatNumber(hz), formatNumber(levelDb, 1)]),
      },
    );
  }
}

function modeRow({ hz, order, decayS, lowS, highS, onVoice }: RoomMode): string[] {
  const time = (seconds: number | null) => (seconds === null ? '–' : formatNumber(seconds, 2));
  const met = onVoice.map((voice) => voices[voice]).join(', ');
  return [formatNumber(hz, 1), order.join(' '), time(decayS), time(lowS), time(highS), met];
}

function thinned({ hz, levelDb }: { readonly hz: readonly number[]; readonly levelDb: readonly number[] }) {
  const kept: { hz: number; levelDb: number }[] = [];
  for (const [index, at] of hz.entries()) {
    const last = kept.at(-1);
    if (last === undefined || Math.log2(at / last.hz) >= rowStep - 1e-9)
      kept.push({ hz: at, levelDb: levelDb[index] ?? Number.NaN });
  }
  return kept;
}
